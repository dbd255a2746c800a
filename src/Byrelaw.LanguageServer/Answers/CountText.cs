using NodaTime.Text;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>Says how many animals a rule lets in.</summary>
internal static class CountText
{
    /// <summary>One or two sentences in Markdown.</summary>
    public static string Of(RuleCount count)
    {
        var (_, met, notMet, notKnown) = count.Tally;
        var all = met + notMet + notKnown;
        var records = count.RecordsTo < count.On ? $", going by records to {Day(count.RecordsTo)}" : "";
        return $"*{Markdown.Text(count.Programme)}*, {Markdown.Text(count.List)}, today ({Day(count.On)}{records}): "
            + $"**met by {met}** of {all} {(all == 1 ? "animal" : "animals")}, not met by {notMet}, not known for {notKnown}.";
    }

    private static string Day(NodaTime.LocalDate day) => LocalDatePattern.Iso.Format(day);
}
