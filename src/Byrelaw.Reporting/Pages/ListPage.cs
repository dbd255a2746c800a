namespace Byrelaw.Reporting.Pages;

/// <summary>A list's first page: counts, what to do next, the draft list, and what is behind it.</summary>
public static class ListPage
{
    /// <summary>The page.</summary>
    /// <param name="list">The list.</param>
    /// <param name="path">Where it lies in the report, without an ending.</param>
    /// <param name="linkTo">The path of an animal's page, relative to this one.</param>
    public static Page Of(ListReport list, string path, Func<string, string> linkTo) =>
        new(path, list.Title, list.Head,
        [
            Top(list),
            WhatIsDoubted.Of(list),
            new DocumentBuilder().Heading(2, "Do next").Numbered(NextOrNothing(list)).As("next"),
            DraftList.Of(list, linkTo),
            Ranked(list, linkTo),
            Later(list),
            FindOutPart.Of(list),
            Keeping(list),
            ShakyOnes(list, linkTo),
            LocalPractice.Of(list),
            RecordProblems.Of(list),
            Reading(list.Use),
            Fingerprints.Of(list.Draft),
            new DocumentBuilder().Heading(2, "Cautions").Bullets(SafetyNotes.General).As("cautions"),
        ]);

    private static Part Top(ListReport list)
    {
        var counts = Wording.Join(" · ", AnswerWords.All.Select<Answer, Wording>(answer => $"{Wording.Bold($"{list.List.Count(answer)}")} {AnswerWords.Both(answer, list.Use)}"));
        var part = new DocumentBuilder().Heading(1, list.Title)
            .Sentence(list.UseSentence)
            .Sentence(PlannedWords.Of(list))
            .Sentence(DangerLine.Of(list.Draft, list.List))
            .Sentence($"{Numbers.Count(list.List.Animals.Length, "animal", "animals")} judged: {counts}")
            .Sentence($"May be used: {AtBest.Of(list.List)}.")
            .Sentence(BothChecks.Of(list)?.InAll() ?? "");
        if (list.List.IsBroken)
        {
            var places = list.List.BrokenParts.Select(broken => $"{broken.Span.File.Path} line {broken.Span.Line}")
                .Concat(BrokenRules(list)).Distinct().ToList();
            part.Led("Nobody on this list is Ready: lines of the rule files cannot be read.", $"{Phrases.And(places)}. A broken rule lets no animal through.");
        }

        var unreadable = list.Herd.Problems.Count(problem => problem.Severity == Severity.Error);
        if (unreadable > 0)
        {
            part.Led($"{Numbers.Count(unreadable, "error", "errors")} in the records.",
                $"What {(unreadable == 1 ? "that line" : "those lines")} might have said is in doubt, and nothing is guessed. See “Problems in the records” below.");
        }

        if (list.Draft.KnownOn is { } day)
        {
            part.Sentence(AsKnownOn(day));
        }

        return part.As("top");
    }

    /// <summary>What judging by an earlier day's knowledge does and does not take back.</summary>
    public static string AsKnownOn(NodaTime.LocalDate day) =>
        $"Judged as known on {Dates.Long(day)}: rows entered and agreements made after that day are not seen. "
        + "Facts without a date, and what the farm says is complete, are today's.";

    private static IEnumerable<string> BrokenRules(ListReport list) =>
        list.Rulebook.Rules.Where(rule => rule.IsBroken && rule.IsFor(list.Name)).Select(rule => $"{rule.Span.File.Path} line {rule.Span.Line}");

    private static IReadOnlyList<string> NextOrNothing(ListReport list) =>
        DoNext.Of(list) is { Count: > 0 } tasks ? tasks : ["Nothing is open on this list."];

    private static Part Ranked(ListReport list, Func<string, string> linkTo)
    {
        var table = new Table($"{AnswerWords.Word(Answer.Ready, list.Use)} and {AnswerWords.Word(Answer.OnCourse, list.Use)}, the best first; ties by number", "rank", "number", "answer", "points", "for");
        foreach (var animal in list.List.Animals.Where(animal => animal.Rank is not null).OrderBy(animal => animal.Rank))
        {
            table.Add($"{animal.Rank!.Value}", Linked(animal, linkTo), AnswerWords.Both(animal.Answer, list.Use),
                Numbers.Of(animal.Score), RankReasons.Of(animal));
        }

        var part = new DocumentBuilder().Heading(2, $"{AnswerWords.Word(Answer.Ready, list.Use)}, ranked");
        return (table.IsEmpty ? part.Sentence(list.Use == ListUse.ForLookingOnly ? "Nobody matches." : "Nobody is Ready or On course.") : part.Table(table)).As("ranked");
    }

    private static Part Later(ListReport list)
    {
        var later = list.List.Animals.Where(animal => animal.Answer == Answer.Later)
            .SelectMany(animal => new[] { (Day: animal.ReadyFrom, Then: "ready, if nothing else happens"), (Day: animal.NotBefore, Then: "to be asked about") }
                .Where(one => one.Day is not null).Select(one => (one.Day, one.Then, animal.Number)))
            .GroupBy(one => (Day: one.Day!.Value, one.Then)).OrderBy(group => group.Key.Day).ThenBy(group => group.Key.Then, StringComparer.Ordinal);
        var table = new Table("Later: from which day, and how sure", "from", "then", "animals", "numbers");
        foreach (var date in later)
        {
            table.Add(Dates.Long(date.Key.Day), date.Key.Then, $"{date.Count()}", string.Join(", ", date.Select(one => one.Number)));
        }

        var part = new DocumentBuilder().Heading(2, "Later, by date");
        return (table.IsEmpty ? part.Sentence("Nobody is Later.") : part.Table(table)).As("later");
    }

    private static Part Keeping(ListReport list)
    {
        var table = new Table("Rules by how many animals each keeps from being Ready", "rule", "keeps back alone", "in all");
        foreach (var rule in KeepsBack.Of(list))
        {
            table.Add(rule.Rule, $"{rule.Alone}", $"{rule.InAll}");
        }

        var part = new DocumentBuilder().Heading(2, "What keeps them back");
        return (table.IsEmpty ? part.Sentence("Nothing: no rule keeps anyone back.") : part.Table(table)).As("keeping");
    }

    private static Part ShakyOnes(ListReport list, Func<string, string> linkTo)
    {
        var table = new Table(
            $"Met, but at the very limit or lapsing within {Shaky.Days} days after the judging days", "number", "answer", "rule", "found");
        foreach (var animal in list.List.Animals.Where(animal => animal.Answer.MayBeUsed()))
        {
            foreach (var rule in animal.Rules.Where(rule => rule.IsShaky))
            {
                table.Add(Linked(animal, linkTo), AnswerWords.Both(animal.Answer, list.Use), rule.Name,
                    RuleWords.Found(rule, list));
            }
        }

        var part = new DocumentBuilder().Heading(2, "What is shaky");
        part = table.IsEmpty ? part.Sentence("No answer rests on a limit just reached or about to lapse.") : part.Table(table);
        return part.Bullets(LetPass(list)).As("shaky");
    }

    /// <summary>Rules that let pass what is not known, and how many of those who may be used passed that way.</summary>
    private static IEnumerable<string> LetPass(ListReport list) =>
        list.List.Animals.Where(animal => animal.Answer.MayBeUsed())
            .SelectMany(animal => animal.Rules).Where(rule => rule.Replaced == Language.Rulebooks.IfNotKnown.Pass)
            .GroupBy(rule => rule.Name).Select(group => $"{group.Key}: not known, and let pass, for {group.Count()} of the Ready and On course.");

    private static Part Reading(ListUse use) => new DocumentBuilder().Heading(2, "How to read the answers")
        .Bullets(AnswerWords.All.Select<Answer, Wording>(answer => $"{Wording.Bold(AnswerWords.Both(answer, use))}: {AnswerWords.Meaning(answer)}."))
        .As("reading");

    private static Wording Linked(AnimalJudgement animal, Func<string, string> linkTo) =>
        Wording.Link(Wording.Bold(animal.Number), linkTo(animal.Number));
}
