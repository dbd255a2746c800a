namespace Byrelaw.Reporting.Pages;

/// <summary>The draft list for the yards, by number. It is a preview: it has no box, for a box would be ticked on a day for which the list was not drawn up.</summary>
public static class DraftList
{
    /// <summary>The part of the list's page.</summary>
    public static Part Of(ListReport list, Func<string, string> linkTo)
    {
        var part = new DocumentBuilder().Heading(2, "The draft list").Sentence(Preview(list));
        if (list.IsForTreatment)
        {
            part.Bullets(NotProven(list)).Sentence(SafetyNotes.Prostaglandin);
        }

        var checks = BothChecks.Of(list);
        var table = new Table($"{list.Title}, by number", ["answer", "number", "tag", "mob", "cow or heifer", .. checks is { IsOfTreatment: true } ? ["may she carry"] : ImmutableArray<Column>.Empty, "reason", "beware"]);
        foreach (var animal in list.List.Animals)
        {
            var report = new AnimalReport(list, animal);
            table.Add(
            [
                AnswerWords.Both(animal.Answer, list.Use),
                Wording.Link(Wording.Bold(animal.Number), linkTo(animal.Number)),
                Particulars.Tag(report),
                Particulars.Mob(report),
                Particulars.Sort(report),
                .. checks is { IsOfTreatment: true } ? [checks.Said(animal)] : Array.Empty<Wording>(),
                Reason.Of(report),
                string.Join("; ", new[] { Beware(report), checks?.Beware(animal) ?? "" }.Where(text => text.Length > 0)),
            ]);
        }

        return (table.IsEmpty ? part.Sentence("No animal of the herd is on this list.") : part.Table(table)).As("draft");
    }

    private static string Preview(ListReport list) => list.IsForTreatment
        ? "A preview: no box stands here, and nobody is given anything by it. Draw it up again that morning, and look up her status beside her."
        : "A preview: no box stands here. Draw it up again on the day.";

    /// <summary>All cautions of a line, with what a hormone does where the list is for treatment.</summary>
    public static string Beware(AnimalReport report)
    {
        var cautions = Cautions.Of(report);
        var text = string.Join("; ", cautions);
        return !report.On.IsForTreatment ? text
            : text.Length == 0 ? SafetyNotes.HormoneLine
            : $"{Phrases.Sentence(text)}. {SafetyNotes.HormoneLine}";
    }

    private static IEnumerable<string> NotProven(ListReport list)
    {
        var rules = list.Rulebook.Rules.Where(rule => rule.IsSafety && rule.IsFor(list.Name)).ToList();
        if (rules.Count == 0)
        {
            yield return "No safety rule on this list says that an animal must be proven not in calf: nobody's status is proven.";
        }

        foreach (var rule in rules)
        {
            var open = list.List.Animals.Count(animal => animal.Rules.Any(judged =>
                judged.Name == rule.Name && judged.Answer is not (Judging.Verdicts.RuleAnswer.Met or Judging.Verdicts.RuleAnswer.DoesNotApply)));
            yield return $"{rule.Name}: not proven for {open} of {Numbers.Count(list.List.Animals.Length, "animal", "animals")}.";
        }
    }
}
