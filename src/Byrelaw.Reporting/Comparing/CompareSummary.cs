namespace Byrelaw.Reporting.Comparing;

/// <summary>What a comparison comes to.</summary>
internal static class CompareSummary
{
    /// <summary>What must be said wherever answers are compared.</summary>
    public const string Caution =
        "These are paper answers. A changed rule is agreed by those who answer for the animals, a licensed vet among them, before anyone acts on it.";

    /// <summary>A sentence or two.</summary>
    public static string Of(ComparisonReport report)
    {
        if (report.Rules.IsEmpty)
        {
            return "The two say the same.";
        }

        var differences = Numbers.Count(report.Rules.Differences.Length, "difference", "differences");
        if (report.Herd is not { } herd)
        {
            return $"{Phrases.Sentence(differences)} between the rules.";
        }

        var animals = herd.Groups.SelectMany(group => group.Animals).Select(animal => animal.Number).Distinct().Count();
        return animals == 0
            ? $"{Phrases.Sentence(differences)} between the rules, and no animal's answer, date or reason changes by them."
            : $"{Phrases.Sentence(differences)} between the rules. Answer, date or reason {(animals == 1 ? "differs" : "differ")} for {Numbers.Count(animals, "animal", "animals")}.";
    }

    /// <summary>The lists of either.</summary>
    public static IEnumerable<string> Lists(HerdComparison herd) => herd.New.Lists.Concat(herd.Old.Lists).Select(list => list.Choice.List).Distinct();

    /// <summary>How many animals of a list have an answer, before and now.</summary>
    public static (int Was, int Now) Counts(HerdComparison herd, string list, Answer answer) => (Count(herd.Old, list, answer), Count(herd.New, list, answer));

    private static int Count(Draft draft, string list, Answer answer) => draft.Lists.Where(judged => judged.Choice.List == list).Sum(judged => judged.Count(answer));
}
