namespace Byrelaw.Judging.Tests.Documents;

/// <summary>A draft's answers in a few words, for the documentation's examples.</summary>
internal static class AnswersText
{
    public static string Of(Draft draft)
    {
        var text = new StringBuilder();
        foreach (var list in draft.Lists)
        {
            text.Append(text.Length == 0 ? "" : "\n").Append(list.Choice.List).Append('\n');
            foreach (var animal in list.Animals)
            {
                text.Append(CultureInfo.InvariantCulture, $"  {animal.Number}  {Of(animal)}\n");
            }
        }

        return text.ToString();
    }

    private static string Of(AnimalJudgement animal)
    {
        var answer = animal.Answer switch
        {
            Answer.OnCourse => "On course",
            Answer.Later => "Later" + (animal.ReadyFrom is null ? "" : $", from {Iso(animal.ReadyFrom)}")
                + (animal.NotBefore is null ? "" : animal.ReadyFrom is null ? $", not before {Iso(animal.NotBefore)}" : $", from {Iso(animal.NotBefore)} if that turns out well")
                + (animal.TooLate ? ", too late for this programme" : ""),
            Answer.No => animal.ForGood ? "No, for good" : "No",
            _ => animal.Answer.ToString(),
        };
        var rules = animal.Rules.Where(rule => rule.InTheWay).Select(rule => rule.Name).ToList();
        var settle = animal.Settle.Select(missing => missing.Subject).Distinct(StringComparer.Ordinal).ToList();
        var then = animal.ThenAsk.Select(missing => missing.Subject).Distinct(StringComparer.Ordinal).ToList();
        return answer
            + (rules.Count == 0 ? "" : "; in the way: " + string.Join(", ", rules))
            + (settle.Count == 0 ? "" : "; would be settled by: " + string.Join(", ", settle))
            + (then.Count == 0 ? "" : "; then still to be asked: " + string.Join(", ", then));
    }

    private static string Iso(LocalDate? date) => date?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "never";
}
