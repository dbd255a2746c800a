namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Kinds with a filter, such as <c>pregnancy test with method not hand</c>: "its entries are the days whose details surely fit, days whose details
/// may fit are in doubt, and its coverage is the kind's". "A filter is held to the day, not to the row."
/// </summary>
/// <param name="vocabulary">With the kinds that rules speak of.</param>
/// <param name="rows">All rows seen, by line.</param>
public sealed class FilterReference(Vocabulary vocabulary, IReadOnlyDictionary<int, EventRow> rows)
{
    /// <summary>Entries of animals, and the days that may be entries.</summary>
    public (List<Happening> Entries, List<Unread> Doubts) Of(IReadOnlyList<Happening> happenings)
    {
        var (entries, doubts) = (new List<Happening>(), new List<Unread>());
        foreach (var kind in vocabulary.Filtered)
        {
            foreach (var day in happenings.Where(row => row.Kind.Id == kind.Declaration.Id).GroupBy(row => (row.Animal, row.Day)))
            {
                var fit = OnADay(kind.Filter!, day.Select(row => row.Line));
                if (fit == Truth.True)
                {
                    entries.AddRange(day.Select(row => row with { Kind = kind }));
                }
                else if (fit == Truth.Unknown)
                {
                    doubts.Add(new Unread(day.Key.Animal, kind, day.Key.Day, day.First().Line));
                }
            }
        }

        return (entries, doubts);
    }

    /// <summary>Results of mobs and of the herd: "of a day that may be meant, a sample whose result nobody knows".</summary>
    public IEnumerable<GroupResult> Of(IReadOnlyList<GroupResult> groups) =>
        from kind in vocabulary.Filtered
        from day in groups.Where(row => row.Result.Kind.Id == kind.Declaration.Id).GroupBy(row => (row.Mob, row.Result.Day))
        let fit = OnADay(kind.Filter!, day.Select(row => row.Result.Line))
        where fit != Truth.False
        from row in fit == Truth.True ? day : day.Take(1)
        select row with { Result = fit == Truth.True ? row.Result with { Kind = kind } : row.Result with { Kind = kind, Answer = -1, Values = ValueRange.Any } };

    /// <summary>"Two rows of one kind on one day of which one surely fits and the other may not leave the whole day in doubt."</summary>
    private Truth OnADay(KindFilter filter, IEnumerable<int> lines) => Kleene.SameForAll(lines.Select(line =>
        Kleene.All(filter.Tests.Select(test => Fits((DetailIs)test, rows[line].Detail(test.Detail.Name))))));

    /// <summary>"Blank: not known, unless the rule files say what blank counts as. What cannot be read is never filled."</summary>
    private static Truth Fits(DetailIs test, string cell)
    {
        var said = cell.Length > 0 ? cell : test.Detail.BlankIs < 0 ? "" : test.Detail.Values[test.Detail.BlankIs];
        return !test.Detail.Values.Any(value => Same(value, said)) ? Truth.Unknown : Kleene.Of(test.Values.Any(value => Same(value, said)) != test.IsNot);
    }

    private static bool Same(string one, string other) => NameFolding.Fold(one) == NameFolding.Fold(other);
}
