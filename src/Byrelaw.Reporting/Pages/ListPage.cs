using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Pages;

/// <summary>A list's page: danger, counts, what finds an animal, every animal in one section, and what is behind it.</summary>
public static class ListPage
{
    /// <summary>The page.</summary>
    /// <param name="list">The list.</param>
    /// <param name="path">Where it lies in the report, without an ending.</param>
    /// <param name="linkTo">The path of an animal's page, relative to this one; null where she has none.</param>
    /// <param name="named">Every session by name; none where nobody is named.</param>
    public static Page Of(ListReport list, string path, Func<string, string?> linkTo, ImmutableArray<NamedSession> named)
    {
        ArgumentNullException.ThrowIfNull(list);
        var sections = ListSection.Of(list, named);
        var here = ListSection.HereIn(list, named);
        var (checks, axis) = (BothChecks.Of(list), HerdStrip.AxisOf(list));
        return new(path, list.Title, list.Head,
        [
            Top(list, sections, here),
            Find(list),
            .. sections.Select(section => SectionPart.Of(section, list, checks, axis, linkTo, section.Kind == SectionKind.Ask && here is { ToAsk.IsEmpty: false } asked
                ? $"{Phrases.FirstOf([.. asked.ToAsk.Select(animal => animal.Number)], 30)} would fill places that are empty." : "")),
            Keeping(list),
            OnlyJust(list, linkTo),
            LocalPractice.Of(list),
            new DocumentBuilder().Fold(Wording.Bold("What to find out, and for whom"), FindOutPart.Of(list), onScreenOnly: true).As("find-out"),
            new DocumentBuilder().Fold(Wording.Bold("What is doubted, and what is wrong in the records"), WhatIsDoubted.Said(list).And(RecordProblems.Said(list.Herd)), onScreenOnly: true).As("doubted"),
            new DocumentBuilder().Fold(Wording.Bold("How to read the answers"), new DocumentBuilder()
                .Bullets(AnswerWords.All.Select<Answer, Wording>(answer => $"{Wording.Bold(AnswerWords.Both(answer, list.Use))}: {AnswerWords.Meaning(answer)}.")), onScreenOnly: true).As("reading"),
            Fingerprints.Of(list.Draft),
            CautionsPart.Of(),
        ]);
    }

    private static Part Top(ListReport list, ImmutableArray<ListSection> sections, NamedSession? here)
    {
        var part = new DocumentBuilder().Heading(1, list.Title);
        if (list.List.IsBroken)
        {
            var places = list.List.BrokenParts.Select(broken => $"{broken.Span.File.Path} line {broken.Span.Line}")
                .Concat(BrokenRules(list)).Distinct().ToList();
            part.Framed(Frame.Stop, $"{Wording.Bold("Nobody on this list is Ready: lines of the rule files cannot be read.")} {Phrases.And(places)}. A broken rule lets no animal through.");
        }

        part.Sentence(list.UseSentence).Draw(DangerBox.Of(list)).Sentence(Preview(list)).Sentence(PlannedWords.Of(list));
        if (list.IsForTreatment)
        {
            part.Bullets(NotProven(list)).Sentence(SafetyNotes.Prostaglandin);
        }

        part.Sentence(here is null ? (Wording)$"May be used: {AtBest.Of(list.List)}." : $"{Wording.Bold(Places(here))} May be used: {AtBest.Of(list.List)}.", Tone.Large)
            .Sentence(BothChecks.Of(list)?.InAll() ?? "");
        var unreadable = list.Herd.Problems.Count(problem => problem.Severity == Severity.Error);
        if (unreadable > 0)
        {
            part.Led($"{Numbers.Count(unreadable, "error", "errors")} in the records.",
                $"What {(unreadable == 1 ? "that line" : "those lines")} might have said is in doubt, and nothing is guessed.");
        }

        if (list.Draft.KnownOn is { } day)
        {
            part.Sentence(AsKnownOn(day));
        }

        if (KeepsBack.Of(list) is { Count: > 0 } kept)
        {
            part.Sentence($"Most are kept back by {Phrases.And([.. kept.OrderByDescending(rule => rule.InAll).Take(3).Select(rule => $"“{rule.Rule}” ({rule.InAll})")])}: {Wording.Link("what keeps how many", "#back")}.");
        }

        return part.Draw(new AnswerBar([.. AnswerWords.All.Select(answer => new AnswerShare(answer, list.Use, list.List.Count(answer), FirstWith(answer, sections)))])).As("top");
    }

    /// <summary>What judging by an earlier day's knowledge does and does not take back.</summary>
    public static string AsKnownOn(LocalDate day) =>
        $"Judged as known on {Dates.Long(day)}: rows entered and agreements made after that day are not seen. "
        + "Facts without a date, and what the farm says is complete, are today's.";

    private static string Preview(ListReport list) => list.IsForTreatment
        ? "A preview: no box stands here, and nobody is given anything by it. Draw it up again that morning, and look up her status beside her."
        : "A preview: no box stands here. Draw it up again on the day.";

    /// <summary><c>9 are wanted, 9 are named, none is short; 8 are spare.</c></summary>
    private static string Places(NamedSession here)
    {
        var wanted = here.Wanted is { } places ? $"{Are(places)} wanted, " : "";
        var missing = here.Short is { } few ? $", {Are(few)} short" : "";
        return Phrases.Sentence($"{wanted}{Are(here.Named.Length)} named{missing}; {Are(here.Spares.Length)} spare.");
    }

    private static string Are(int count) => count switch { 0 => "none is", 1 => "1 is", _ => $"{count} are" };

    private static string? FirstWith(Answer answer, ImmutableArray<ListSection> sections) =>
        sections.FirstOrDefault(section => section.Animals.Any(animal => animal.Answer == answer)) is { } section ? $"#{section.Anchor}" : null;

    private static IEnumerable<string> BrokenRules(ListReport list) =>
        list.Rulebook.Rules.Where(rule => rule.IsBroken && rule.IsFor(list.Name)).Select(rule => $"{rule.Span.File.Path} line {rule.Span.Line}");

    private static IEnumerable<string> NotProven(ListReport list)
    {
        var rules = list.Rulebook.Rules.Where(rule => rule.IsSafety && rule.IsFor(list.Name)).ToList();
        if (rules.Count == 0)
        {
            yield return "No safety rule on this list says that an animal must be proven not in calf: nobody's status is proven.";
        }

        foreach (var rule in rules)
        {
            var open = list.List.Animals.Count(animal => animal.Rules.Any(judged => judged.Name == rule.Name && judged.Answer is not (RuleAnswer.Met or RuleAnswer.DoesNotApply)));
            yield return $"{rule.Name}: not proven for {open} of {Numbers.Count(list.List.Animals.Length, "animal", "animals")}.";
        }
    }

    private static Part Find(ListReport list)
    {
        var answers = AnswerWords.All.Select(answer => (Answer: answer, Count: list.List.Count(answer))).Where(one => one.Count > 0)
            .Select(one => new FinderButton($"{AnswerWords.Both(one.Answer, list.Use)} {one.Count}", FinderKey.Answer, "", one.Answer));
        var danger = list.List.Animals.Count(animal => animal.InCalf != InCalf.NotTold);
        var mobs = list.List.Animals.Select(animal => Particulars.Mob(new AnimalReport(list, animal))).Where(mob => mob.Length > 0).Distinct().Order(StringComparer.OrdinalIgnoreCase).ToList();
        return list.List.Animals.IsEmpty ? new DocumentBuilder().Sentence("No animal of the herd is on this list.").As("find-part")
            : new DocumentBuilder().Draw(new Finder(
            [
                .. answers, .. danger > 0 ? [new FinderButton($"In calf? {danger}", FinderKey.InCalf, "1")] : Array.Empty<FinderButton>(),
                .. mobs.Count > 1 ? mobs.Select(mob => new FinderButton(mob, FinderKey.Mob, mob)) : [],
            ])).As("find-part");
    }

    private static Part Keeping(ListReport list)
    {
        var kept = KeepsBack.Of(list);
        return kept.Count == 0 ? Part.None : new DocumentBuilder().Heading(2, "What keeps them back").Draw(new KeptBack("Rules by how many animals each keeps from being Ready", [.. kept])).As("keeping", "back");
    }

    private static Part OnlyJust(ListReport list, Func<string, string?> linkTo)
    {
        var table = new Table($"Met, but at the very limit or lapsing within {Shaky.Days} days after the judging days", "number", "answer", "rule", "found");
        foreach (var animal in list.List.Animals.Where(animal => animal.Answer.MayBeUsed()))
        {
            foreach (var rule in animal.Rules.Where(rule => rule.IsShaky))
            {
                table.Add(linkTo(animal.Number) is { } page ? Wording.Link(Wording.Bold(animal.Number), page) : Wording.Bold(animal.Number), AnswerWords.Both(animal.Answer, list.Use), rule.Name, RuleWords.Found(rule, list));
            }
        }

        var passed = LetPass(list).ToList();
        return table.IsEmpty && passed.Count == 0 ? Part.None : new DocumentBuilder().Heading(2, "What holds, but only just").Table(table).Bullets(passed).As("shaky");
    }

    /// <summary>Rules that let pass what is not known, and how many of those who may be used passed that way.</summary>
    private static IEnumerable<string> LetPass(ListReport list) =>
        list.List.Animals.Where(animal => animal.Answer.MayBeUsed())
            .SelectMany(animal => animal.Rules).Where(rule => rule.Replaced == IfNotKnown.Pass)
            .GroupBy(rule => rule.Name).Select(group => $"{group.Key}: not known, and let pass, for {group.Count()} of the Ready and On course.");
}
