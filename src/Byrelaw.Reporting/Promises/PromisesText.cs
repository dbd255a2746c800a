using Byrelaw.Judging.Supposing;

namespace Byrelaw.Reporting.Promises;

/// <summary>Which promises would open how much, for a terminal.</summary>
public static class PromisesText
{
    // With what stands before it, a line of a terminal.
    private const int Widest = 88;

    /// <summary>One table a list; lines end with LF.</summary>
    public static string Of(IEnumerable<PromiseGains> lists, Herd herd, Ink ink) => string.Join('\n', lists.Select(list => Of(list, herd, ink)));

    private static string Of(PromiseGains list, Herd herd, Ink ink)
    {
        var text = new DocumentBuilder().Sentence($"{Wording.Bold(Phrases.Sentence(list.Choice.List))}: {Numbers.Count(list.Animals, "animal", "animals")}, {list.Asked} Ask.").Gap();
        if (list.Steps.IsEmpty)
        {
            return text.Sentence(list.Asked == 0 ? "Nobody is asked about." : "No promise alone lets anybody leave Ask: what is asked about are results, facts and rows that cannot be read.").OnTerminal(ink);
        }

        var table = new Table(
            "What would be promised", new Column("step", IsNumber: true), "since", new Column("leave Ask", IsNumber: true), new Column("of them usable", IsNumber: true),
            new Column("leave Ask at best", IsNumber: true));
        foreach (var (step, number) in list.Steps.Select((step, i) => (step, i + 1)))
        {
            table.Add($"{number}", Dates.Long(step.Since), $"{step.LeaveAsk}", $"{step.Usable}", $"{step.LeaveAskAtBest}");
        }

        text.Sentence("If the farm can say that all of these are on record, each step on top of those before:").Gap().Table(table).Gap();
        foreach (var (step, number) in list.Steps.Select((step, i) => (step, i + 1)))
        {
            foreach (var (line, i) in Lines([.. step.Kinds.Select(kind => kind.Name)]).Select((line, i) => (line, i)))
            {
                text.In(i == 0 ? 0 : 1).Sentence(i == 0 ? $"{Wording.Bold($"{number}.")} {(number == 1 ? "" : "and ")}{line}" : line);
            }

            text.In(1).Sentence($"The records: {Look(step, herd)}.").In(0);
        }

        text.Gap().Sentence("At best: if all else that is asked of them turns out well.");
        var against = Phrases.And([.. list.Steps.Select((step, i) => (step, Number: $"{i + 1}")).Where(one => !one.step.Against.IsEmpty).Select(one => one.Number)]);
        return text.Sentence($"Write no promise because it opens something: write what is true.{(against.Length == 0 ? "" : $" {against} would not count today.")}").OnTerminal(ink);
    }

    /// <summary>Names with commas between, as many on a line as a terminal shows at once.</summary>
    private static IEnumerable<string> Lines(IReadOnlyList<string> names)
    {
        var line = new StringBuilder();
        for (var name = 0; name < names.Count; name++)
        {
            var next = name == names.Count - 1 ? names[name] : names[name] + ",";
            if (line.Length > 0 && line.Length + 1 + next.Length > Widest)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(next);
        }

        yield return line.ToString();
    }

    /// <summary>What the records say to the promise.</summary>
    private static string Look(PromiseStep step, Herd herd) =>
        step.Against.IsEmpty ? step.Entries == 0 ? "none on record" : $"{step.Entries} on record" : string.Join("; ", step.Against.Select(doubt => DoubtWords.Of(doubt, herd).Lead).Distinct());
}
