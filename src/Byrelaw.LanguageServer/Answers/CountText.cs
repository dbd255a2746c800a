using NodaTime.Text;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>Says how many animals a rule lets in.</summary>
internal static class CountText
{
    /// <summary>One or two sentences in Markdown.</summary>
    public static string Of(RuleCount count)
    {
        var all = count.Met + count.NotMet + count.NotKnown;
        var records = count.RecordsTo < count.On ? $", going by records to {Day(count.RecordsTo)}" : "";
        return $"*{Markdown.Text(count.Programme)}*, {Markdown.Text(count.List)}, today ({Day(count.On)}{records}): "
            + $"**met by {count.Met}** of {all} {(all == 1 ? "animal" : "animals")}, not met by {count.NotMet}, not known for {count.NotKnown}.";
    }

    private static string Day(NodaTime.LocalDate day) => LocalDatePattern.Iso.Format(day);
}
