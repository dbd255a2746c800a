namespace Byrelaw.Records.Suggesting;

/// <summary>
/// Finds in each file the column of the animals: the one of different numbers in one file that the other files repeat, or one that is headed so.
/// </summary>
internal sealed class AnimalColumnFinder
{
    /// <summary>So many columns are shown to choose from.</summary>
    private const int Most = 4;

    private readonly IReadOnlyList<SuggestedFile> _files;
    private readonly HeadingMeanings _meanings;
    private readonly List<(SuggestedFile File, ColumnProfile Column)> _keys;

    /// <summary>Looks at all files together.</summary>
    public AnimalColumnFinder(IReadOnlyList<SuggestedFile> files, HeadingMeanings meanings)
    {
        (_files, _meanings) = (files, meanings);
        _keys = [.. files.SelectMany(file => file.Columns.Where(column => column.AreDifferent && 10 * column.Filled >= 9 * file.Table.Rows.Count && !column.HoldsDates), (file, column) => (file, column))];
    }

    /// <summary>The columns of a file that may be it, the likeliest first: one where nothing else can be meant, none where none can be found.</summary>
    public IReadOnlyList<AnimalColumn> In(SuggestedFile file)
    {
        var named = file.Columns.Where(column => _meanings.IsHeaded(column, "animal")).ToList();
        var repeated = Repeated(file);
        if (named is [var only] && ((repeated.Count == 0 && ButForZeros(file, named) is null) || repeated.Exists(one => one.Column == only)))
        {
            return [Column(only, repeated, isByIdentity: false, isSure: true)];
        }

        if (repeated.Count == 0 && ButForZeros(file, named) is { } padded)
        {
            return [padded];
        }

        if (repeated.Count == 0)
        {
            return [.. named.Select(column => Column(column, repeated, isByIdentity: false, isSure: false))];
        }

        // A score or a count has few texts, and all of them stand among numbers of animals.
        var all = repeated.Select(one => one.Column).Distinct().OrderByDescending(column => column.Texts.Count).ToList();
        all.RemoveAll(column => 2 * column.Texts.Count < all[0].Texts.Count);
        var own = all.FindAll(column => !IsByIdentity(column, repeated));
        var likely = own.Count > 0 ? own : all;
        var isSure = likely.Count == 1 && repeated.Exists(one => one.Column == likely[0] && one.IsWhole) && (MayBeNothingElse(likely[0]) || IsNamed(likely[0]));
        return [.. likely.Take(Most).Select(column => Column(column, repeated, IsByIdentity(column, repeated), isSure))];
    }

    private static AnimalColumn Column(ColumnProfile column, List<Repetition> repeated, bool isByIdentity, bool isSure)
    {
        var others = repeated.Where(one => one.Column == column).Select(one => one.Other.Name).Distinct().ToList();
        return new AnimalColumn(column, isByIdentity, isSure, $"{column.Texts.Count} different{(others.Count == 0 ? "" : $"; its numbers stand in {Phrases.And(others)} too")}");
    }

    /// <summary>A column headed as numbers are, whose numbers stand in another file with other zeros in front: that they are the same, only a person can say.</summary>
    private AnimalColumn? ButForZeros(SuggestedFile file, List<ColumnProfile> named)
    {
        foreach (var column in named)
        {
            foreach (var (holder, key) in _keys.Where(one => one.File != file && _meanings.IsHeaded(one.Column, "animal")))
            {
                var plain = key.Texts.Keys.Select(text => text.TrimStart('0')).ToHashSet(StringComparer.Ordinal);
                if (plain.Count == key.Texts.Count && 2 * column.Texts.Keys.Count(text => plain.Contains(text.TrimStart('0'))) > column.Texts.Count)
                {
                    return new AnimalColumn(column, IsByIdentity: false, IsSure: false, $"{column.Texts.Count} different; but for zeros in front its numbers stand in {holder.Name} too") { IsByNumber = true };
                }
            }
        }

        return null;
    }

    private bool IsNamed(ColumnProfile column) => _meanings.IsHeaded(column, "animal") || _meanings.IsIdentity(column);

    /// <summary>Small numbers may be days, scores or yields.</summary>
    private static bool MayBeNothingElse(ColumnProfile column) => !column.All(cell => cell.Length < 4 && cell.All(char.IsAsciiDigit));

    /// <summary>Whether animals are found by an identity: where the file that holds it says her own number beside it. Else the identity is her number.</summary>
    private bool IsByIdentity(ColumnProfile column, List<Repetition> repeated) =>
        repeated.Exists(one => one.Column == column && (_meanings.IsIdentity(column) || _meanings.IsIdentity(one.Key))
            && one.Holder.Columns.Any(other => other != one.Key && !_meanings.IsIdentity(other) && (_meanings.IsHeaded(other, "animal") || _keys.Contains((one.Holder, other)))));

    /// <summary>Columns of a file whose texts are those of a column of different numbers in another file, or the other way round.</summary>
    private List<Repetition> Repeated(SuggestedFile file)
    {
        var found = new List<Repetition>();
        foreach (var (holder, key) in _keys)
        {
            foreach (var (other, column) in holder == file ? ColumnsOf(_files.Where(other => other != file)) : ColumnsOf([file]))
            {
                var shared = column.Plain.Count(key.Plain.Contains);
                if (shared >= 2 && 2 * shared >= column.Texts.Count && column.Texts.Keys.Any(text => text.Any(char.IsAsciiDigit)))
                {
                    found.Add(new Repetition(holder == file ? key : column, holder == file ? other : holder, holder, key, IsWhole: 10 * shared >= 9 * column.Texts.Count));
                }
            }
        }

        return found;
    }

    private static IEnumerable<(SuggestedFile File, ColumnProfile Column)> ColumnsOf(IEnumerable<SuggestedFile> files) =>
        files.SelectMany(file => file.Columns.Where(column => !column.HoldsDates), (file, column) => (file, column));

    /// <param name="Column">The column of the file that is looked at.</param>
    /// <param name="Other">The file with the same numbers.</param>
    /// <param name="Holder">The file, of the two, that the key stands in.</param>
    /// <param name="Key">The column, in either, of which no number stands there twice, but for a slip.</param>
    /// <param name="IsWhole">Whether nine of ten numbers are the same; else half of them are.</param>
    private sealed record Repetition(ColumnProfile Column, SuggestedFile Other, SuggestedFile Holder, ColumnProfile Key, bool IsWhole);
}
