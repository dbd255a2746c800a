namespace Byrelaw.Records.Reading;

/// <summary>Rows that are doubted, together by the reason.</summary>
internal static class DoubtedRows
{
    // One row, or two, may well be slips; told of as rows that cannot be read.
    private const int RowsOfAnAnimal = 3;

    /// <summary>What is doubted of the rows by themselves, whatever anybody promises.</summary>
    /// <param name="found">What showed when the rows were put together.</param>
    /// <param name="doubles">Animals with two numbers.</param>
    /// <param name="stages">What was read.</param>
    /// <param name="supposed">What is supposed besides.</param>
    /// <param name="leftOut">Rows that the farm's own line leaves out.</param>
    public static ImmutableArray<Doubted> Of(
        IEnumerable<(RowDoubt Why, RowInDoubt Row)> found, Doubles doubles, IReadOnlyList<EventStage> stages, IEnumerable<EventStage> supposed, ImmutableArray<RowsLeftOut> leftOut) =>
    [
        .. NotListed(stages),
        .. doubles.Any ? [new TwoNumbers([.. doubles.Pairs])] : ImmutableArray<Doubted>.Empty,
        .. found.Concat(stages.Concat(supposed).SelectMany(stage => stage.Doubted)).GroupBy(one => one.Why, one => one.Row).OrderBy(group => group.Key)
            .Select(group => new RowsInDoubt(group.Key, [.. group.OrderBy(row => row.IsOfAnimals ? 0 : 1).ThenBy(row => row.Line).ThenBy(row => row.Day)])),
        .. leftOut,
    ];

    private static ImmutableArray<Doubted> NotListed(IEnumerable<EventStage> stages)
    {
        ImmutableArray<NumberNotListed> several = [.. stages.SelectMany(stage => stage.NotListed).GroupBy(one => one.Number, one => one.Row, StringComparer.Ordinal)
            .Where(rows => rows.Count() >= RowsOfAnAnimal).Select(rows => new NumberNotListed(rows.Key, [.. rows.OrderBy(row => row.Line)]))
            .OrderByDescending(number => number.Rows.Length).ThenBy(number => number.Rows[0].Line)];
        return several.IsEmpty ? [] : [new NotListed(several)];
    }
}
