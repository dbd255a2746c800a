using Byrelaw.Judging.Supposing;

namespace Byrelaw.Reporting.Promises;

/// <summary>Which promises would open how much, for a terminal.</summary>
public static class PromisesText
{
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
            "What would be promised", "if the farm can say that all of these are on record", "since", new Column("leave Ask", IsNumber: true), new Column("of them usable", IsNumber: true),
            new Column("leave Ask, if all else turns out well", IsNumber: true), "the records");
        foreach (var (step, number) in list.Steps.Select((step, i) => (step, i + 1)))
        {
            table.Add($"{number}. {(number == 1 ? "" : "and ")}{string.Join(", ", step.Kinds.Select(kind => kind.Name))}", Dates.Long(step.Since), $"{step.LeaveAsk}", $"{step.Usable}", $"{step.LeaveAskAtBest}", Look(step, herd));
        }

        text.Table(table).Gap();
        var against = Phrases.And([.. list.Steps.Select((step, i) => (step, Number: $"{i + 1}")).Where(one => !one.step.Against.IsEmpty).Select(one => one.Number)]);
        return text.Sentence($"Write no promise because it opens something: write what is true.{(against.Length == 0 ? "" : $" {against} would not count today.")}").OnTerminal(ink);
    }

    /// <summary>What the records say to the promise.</summary>
    private static string Look(PromiseStep step, Herd herd) =>
        step.Against.IsEmpty ? step.Entries == 0 ? "none on record" : $"{step.Entries} on record" : string.Join("; ", step.Against.Select(doubt => DoubtWords.Of(doubt, herd).Lead).Distinct());
}
