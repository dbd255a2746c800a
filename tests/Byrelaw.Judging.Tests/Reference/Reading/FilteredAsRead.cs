namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A kind with a filter is a kind of its own. Its entries are the days whose detail surely fits. A day whose detail may fit (blank, unreadable, rows of that
/// day that differ) is in doubt."
/// </summary>
public sealed class FilteredAsRead
{
    private readonly DetailsAsRead _details;

    /// <param name="vocabulary">With kinds with a filter.</param>
    /// <param name="details">What stands in the columns of details.</param>
    /// <param name="happenings">Of plain kinds.</param>
    /// <param name="ofMobs">Mobs' own results.</param>
    /// <param name="ofGroups">Results that may or may not be each member's.</param>
    public FilteredAsRead(Vocabulary vocabulary, DetailsAsRead details, IReadOnlyList<Happening> happenings, IReadOnlyList<MobResult> ofMobs, IReadOnlyList<GroupResult> ofGroups)
    {
        _details = details;
        foreach (var kind in vocabulary.Filtered)
        {
            var of = kind.Declaration.Id;
            foreach (var day in happenings.Where(row => row.Kind.Id == of).GroupBy(row => (row.Animal, row.Day)))
            {
                switch (Fits(kind, day.Select(row => row.Line)))
                {
                    case Truth.True:
                        Happenings.AddRange(day.Select(row => row with { Kind = kind }));
                        break;
                    case Truth.Unknown:
                        Unread.Add(new Unread(day.Key.Animal, kind, day.Key.Day, day.Min(row => row.Line)) { IsOfDetails = true });
                        break;
                }
            }

            foreach (var day in ofMobs.Where(row => row.Measure.Id == of).GroupBy(row => (row.Mob, row.Day)))
            {
                var fits = Fits(kind, day.Select(row => row.Line));
                MobResults.AddRange(fits == Truth.False ? [] : fits == Truth.True ? day.Select(row => row with { Measure = (MeasureKind)kind })
                    : [day.MinBy(row => row.Line)! with { Measure = (MeasureKind)kind, Values = ValueRange.Any, MayNotBeMeant = true }]);
            }

            foreach (var day in ofGroups.Where(row => row.Result.Kind.Id == of).GroupBy(row => (row.Mob, row.Result.Day)))
            {
                var fits = Fits(kind, day.Select(row => row.Result.Line));
                GroupResults.AddRange(fits == Truth.False ? [] : fits == Truth.True ? day.Select(row => row with { Result = row.Result with { Kind = kind } })
                    : [day.MinBy(row => row.Result.Line)! with { Result = day.MinBy(row => row.Result.Line)!.Result with { Kind = kind, Answer = -1, Values = ValueRange.Any } }]);
            }
        }
    }

    public List<Happening> Happenings { get; } = [];

    public List<MobResult> MobResults { get; } = [];

    public List<GroupResult> GroupResults { get; } = [];

    public List<Unread> Unread { get; } = [];

    private Truth Fits(Kind kind, IEnumerable<int> lines) => Kleene.SameForAll(lines.Select(line => _details.Fits(kind.Filter!, line)));
}
