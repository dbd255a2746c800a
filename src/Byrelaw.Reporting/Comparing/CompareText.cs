namespace Byrelaw.Reporting.Comparing;

/// <summary>Two rulebooks compared, for a terminal.</summary>
public static class CompareText
{
    /// <summary>All of it, with line ends LF.</summary>
    public static string Of(ComparisonReport report, Ink ink)
    {
        var text = new StringBuilder();
        text.Append(CompareSummary.Of(report)).Append('\n');
        foreach (var (heading, differences) in report.Sections)
        {
            text.Append('\n').Append(ink.Bold(PlainText.Clean(heading))).Append('\n');
            foreach (var difference in differences)
            {
                text.Append($"  {PlainText.Clean($"{DifferenceWords.Lead(difference)}. {DifferenceWords.Rest(difference)}")}\n");
            }
        }

        if (report.Herd is { } herd)
        {
            Animals(text, herd, ink);
        }

        if (!report.MadeUp.IsEmpty)
        {
            text.Append('\n').Append(ink.Bold(MadeUpWords.Heading(report.MadeUp[0].Day))).Append('\n');
            foreach (var animal in report.MadeUp)
            {
                text.Append($"  {PlainText.Clean($"{animal.Rule}. {MadeUpWords.Of(animal)}")}\n");
            }
        }

        return text.ToString();
    }

    private static void Animals(StringBuilder text, HerdComparison herd, Ink ink)
    {
        text.Append('\n').Append(ink.Bold("What it changes for the animals")).Append('\n');
        foreach (var list in CompareSummary.Lists(herd))
        {
            var counts = AnswerWords.All.Select(answer => (Answer: answer, Counts: CompareSummary.Counts(herd, list, answer)));
            text.Append($"  {PlainText.Clean(list)}: ").AppendJoin(" · ", counts.Select(one =>
                $"{AnswerWords.Both(one.Answer)} {(one.Counts.Was == one.Counts.Now ? $"{one.Counts.Now}" : $"{one.Counts.Was} → {one.Counts.Now}")}")).Append('\n');
        }

        foreach (var group in herd.Groups)
        {
            text.Append('\n').Append(ink.Bold(PlainText.Clean($"  Because of {CauseWords.Title(group.Cause)}: {Numbers.Count(group.Animals.Length, "animal", "animals")}"))).Append('\n');
            if (CauseWords.HowTogether(group.Cause) is { Length: > 0 } how)
            {
                text.Append($"  {PlainText.Clean(how)}\n");
            }

            foreach (var animal in group.Animals)
            {
                text.Append($"    {PlainText.Clean($"{animal.Number} ({animal.List})  {Said(AnimalWords.Old(animal, herd))}  →  {Said(AnimalWords.New(animal, herd))}")}\n");
            }
        }

        if (!herd.Groups.IsEmpty)
        {
            text.Append('\n').Append(CompareSummary.Caution).Append('\n');
        }
    }

    private static string Said((string Answer, string Reason) said) => said.Reason.Length == 0 ? said.Answer : $"{said.Answer} ({said.Reason})";
}
