namespace Byrelaw.Reporting.Words;

/// <summary>Numbers of several rows that are no animal's, and the one job that mends them.</summary>
internal static class NotListedWords
{
    private const int Named = 4;

    /// <summary>All of them.</summary>
    public static SaidDoubt Of(NotListed doubt, Herd herd)
    {
        var file = FileWords.Short(herd.EventPlace(doubt.Numbers[0].Rows[0].Line).File);
        return (doubt.Numbers is [var one] ? One(one, file) : Several(doubt.Numbers, file)) with
        {
            Rows = [.. doubt.Numbers.SelectMany(number => number.Rows).Select(row => DoubtRow.Of(row, herd))],
            IsCauseOfOthers = true,
        };
    }

    private static SaidDoubt One(NumberNotListed one, string file) => new("not_listed",
        $"{one.Number} stands in {one.Rows.Length} rows of {file}, and no animal on the list has that number",
        "What these rows say may have happened to any animal, so nothing is known of anybody on their days.",
        $"Add {one.Number} to the list with her sex, also if she is gone, and a row for the day on which she left; if {one.Number} is another number of an animal that is listed, write “same animal” with both numbers.");

    private static SaidDoubt Several(ImmutableArray<NumberNotListed> numbers, string file) => new("not_listed",
        $"{numbers.Length} numbers stand in several rows each of {file}, and no animal on the list has them: {Phrases.FirstOf([.. numbers.Select(number => $"{number.Number} ({number.Rows.Length} rows)")], Named)}",
        "What these rows say may have happened to any animal, so nothing is known of anybody on their days.",
        "Add them to the list with their sex, also those that are gone, each with a row for the day on which she left; if one is another number of an animal that is listed, write “same animal” with both numbers.");
}
