using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Terminal;

/// <summary>What is doubted about the records, for a terminal: a line each.</summary>
public static class DoubtLines
{
    private const int Shown = 3;

    /// <summary>The first few, and how many more there are; nothing where nothing is doubted.</summary>
    public static IEnumerable<string> Short(Herd herd)
    {
        foreach (var open in OpenSheetWords.Of(herd))
        {
            yield return open;
        }

        var doubts = DoubtWords.Of(herd);
        foreach (var said in doubts.Take(Shown))
        {
            yield return $"Doubted: {Phrases.Small(said.Sentence)} {said.Effect}{(said.IsCauseOfOthers ? $" {said.Settle}" : "")}";
        }

        if (doubts.Length > Shown)
        {
            yield return $"{Numbers.Count(doubts.Length - Shown, "more doubt", "more doubts")}: see “What is doubted” in the report.";
        }
    }
}
