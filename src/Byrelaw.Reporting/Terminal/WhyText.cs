namespace Byrelaw.Reporting.Terminal;

/// <summary>One animal's explanation for a terminal.</summary>
public static class WhyText
{
    private const int WidestColumn = 44;

    /// <summary>The explanation, with line ends LF.</summary>
    /// <param name="report">The animal on one list.</param>
    /// <param name="all">Whether rules that are simply met, or do not apply, are listed too.</param>
    /// <param name="ink">How text is set off.</param>
    public static string Of(AnimalReport report, bool all, Ink ink)
    {
        var (list, animal) = (report.On, report.Animal);
        var text = new StringBuilder();
        var head = $"{ink.Bold(PlainText.Clean(animal.Number))} · {PlainText.Clean(list.Name)} for {list.Days} ({ReachWords.Of(list.Herd)}"
            + (list.Draft.KnownOn is { } day ? $", as known on {Dates.Long(day)})" : ")");
        text.Append(head).Append("\n\n");
        Line(text, $"{AnswerWords.Shape(animal.Answer)} {Headline.Of(report)}{(report.IsTooLate ? ", too late for this programme" : "")}.", ink.Bold);
        Line(text, WhyNot.Of(report, withClauses: true));
        Line(text, SmallestChange.Of(report));
        Line(text, $"To do: {ToDo.Of(report)}");
        if (DraftList.Beware(report) is { Length: > 0 } beware)
        {
            Line(text, $"Beware: {beware}");
        }

        text.Append('\n');
        if (Story.Of(report) is { Count: > 0 } story)
        {
            Line(text, string.Join(" · ", story));
            text.Append('\n');
        }

        Table(text, report, all, ink);
        text.Append('\n');
        Line(text, SafetyNotes.General[0], ink.Faint);
        return text.ToString();
    }

    private static void Line(StringBuilder text, string words, Func<string, string>? style = null)
    {
        var clean = PlainText.Clean(words);
        text.Append("  ").Append(style is null ? clean : style(clean)).Append('\n');
    }

    private static void Table(StringBuilder text, AnimalReport report, bool all, Ink ink)
    {
        var shown = RuleOrder.Of(report.Animal).Where(rule => all || (report.IsGone ? rule.Gate == Gate.InTheHerd : IsWorthALine(rule))).ToList();
        var rows = shown.Select(rule => Cells(rule, report.On)).ToList();
        var widths = Enumerable.Range(0, 3).Select(i => Math.Min(WidestColumn, rows.Select(row => row[i].Length).DefaultIfEmpty(0).Max())).ToList();
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            var shape = RuleAnswerWords.Shape(shown[i]);
            var name = row[0].PadRight(widths[0]);
            text.Append("  ").Append(shape).Append(' ').Append(shown[i].InTheWay ? ink.Bold(name) : name)
                .Append("  ").Append(row[1].PadRight(widths[1])).Append("  ").Append(row[2].PadRight(widths[2])).Append("  ").Append(ink.Faint(row[3]));
            TrimEnd(text);
            text.Append('\n');
        }

        if (report.Animal.Rules.Length > shown.Count)
        {
            var hidden = report.Animal.Rules.Except(shown).ToList();
            var onTheDay = hidden.Count(rule => rule.Rule?.OnTheDay == true && rule.Answer != RuleAnswer.DoesNotApply);
            var met = hidden.Count(rule => rule.Rule?.OnTheDay != true && rule.Answer == RuleAnswer.Met);
            var not = hidden.Count(rule => rule.Answer == RuleAnswer.DoesNotApply);
            var more = hidden.Count - onTheDay - met - not;
            string[] parts =
            [
                met > 0 ? $"{met} more met" : "",
                not == 1 ? "1 does not apply" : not > 0 ? $"{not} do not apply" : "",
                onTheDay > 0 ? $"{onTheDay} judged on the day" : "",
                more > 0 ? $"{more} that no longer matter" : "",
            ];
            text.Append("  … ").AppendJoin(", ", parts.Where(part => part.Length > 0)).Append(": --all shows them\n");
        }
    }

    private static bool IsWorthALine(RuleJudgement rule) =>
        rule.InTheWay || rule.IsShaky || rule.Waiver is not null || rule.Replaced != IfNotKnown.Ask
        || rule.Rule is { Basis: Basis.Changed or Basis.Local, OnTheDay: false } && rule.Answer != RuleAnswer.DoesNotApply;

    private static string[] Cells(RuleJudgement rule, ListReport list)
    {
        var records = RuleWords.Records(rule, list);
        var changed = rule.Rule is { Before: not null } written ? $"changed here: {Changes(written, list)}" : "";
        string[] cells =
        [
            rule.Name, RuleWords.Found(rule, list), RuleWords.Settles(rule, list),
            string.Join("; ", new[] { records, changed }.Where(part => part.Length > 0)),
        ];
        return [.. cells.Select(PlainText.Clean)];
    }

    /// <summary>What it was before each change, the latest first, with who agreed to the change.</summary>
    private static string Changes(Rule rule, ListReport list)
    {
        var changes = new List<string>();
        for (var version = rule; version.Before is { } before; version = before)
        {
            changes.Add($"was {ConditionText.Of(before.Needs)}{(version.Agreement is { } agreed ? $" ({Phrases.And(agreed.By)}, {list.Long(agreed.On)})" : "")}");
        }

        return string.Join("; before that ", changes);
    }

    private static void TrimEnd(StringBuilder text)
    {
        while (text.Length > 0 && text[^1] == ' ')
        {
            text.Length--;
        }
    }
}
