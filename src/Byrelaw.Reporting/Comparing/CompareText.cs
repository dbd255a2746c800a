namespace Byrelaw.Reporting.Comparing;

/// <summary>Two rulebooks compared, for a terminal.</summary>
public static class CompareText
{
    /// <summary>All of it, with line ends LF.</summary>
    public static string Of(ComparisonReport report, Ink ink)
    {
        var text = new DocumentBuilder().Sentence(CompareSummary.Of(report));
        foreach (var (heading, differences) in report.Sections)
        {
            text.In(0).Gap().Heading(2, heading).In(1);
            foreach (var difference in differences)
            {
                text.Sentence($"{DifferenceWords.Lead(difference)}. {DifferenceWords.Rest(difference)}");
            }
        }

        if (report.Herd is { } herd)
        {
            Animals(text, herd);
        }

        if (!report.MadeUp.IsEmpty)
        {
            text.In(0).Gap().Heading(2, MadeUpWords.Heading(report.MadeUp[0].Day)).In(1);
            foreach (var animal in report.MadeUp)
            {
                text.Sentence($"{animal.Rule}. {MadeUpWords.Of(animal)}");
            }
        }

        return text.OnTerminal(ink);
    }

    private static void Animals(DocumentBuilder text, HerdComparison herd)
    {
        text.In(0).Gap().Heading(2, "What it changes for the animals").In(1);
        foreach (var list in CompareSummary.Lists(herd))
        {
            var counts = AnswerWords.All.Select(answer => (Answer: answer, Counts: CompareSummary.Counts(herd, list, answer)));
            text.Sentence($"{list}: {string.Join(" · ", counts.Select(one =>
                $"{AnswerWords.Both(one.Answer)} {(one.Counts.Was == one.Counts.Now ? $"{one.Counts.Now}" : $"{one.Counts.Was} → {one.Counts.Now}")}"))}");
        }

        foreach (var group in herd.Groups)
        {
            text.In(0).Gap().Heading(3, $"Because of {CauseWords.Title(group.Cause)}: {Numbers.Count(group.Animals.Length, "animal", "animals")}")
                .In(1).Sentence(CauseWords.HowTogether(group.Cause)).In(2);
            foreach (var animal in group.Animals)
            {
                text.Sentence($"{animal.Number} ({animal.List})  {Said(AnimalWords.Old(animal, herd))}  →  {Said(AnimalWords.New(animal, herd))}");
            }
        }

        if (!herd.Groups.IsEmpty)
        {
            text.In(0).Gap().Sentence(CompareSummary.Caution);
        }
    }

    private static string Said((string Answer, string Reason) said) => said.Reason.Length == 0 ? said.Answer : $"{said.Answer} ({said.Reason})";
}
