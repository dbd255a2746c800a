namespace Byrelaw.Records.Suggesting;

/// <summary>
/// Finds in each file the column of the animals: the one of different numbers in one file that the other files repeat, or one that is headed so.
/// </summary>
internal sealed class AnimalColumns
{
    private readonly IReadOnlyList<SuggestedFile> _files;
    private readonly HeadingMeanings _meanings;
    private readonly List<(SuggestedFile File, ColumnProfile Column)> _keys;

    /// <summary>Looks at all files together.</summary>
    public AnimalColumns(IReadOnlyList<SuggestedFile> files, HeadingMeanings meanings)
    {
        (_files, _meanings) = (files, meanings);
        _keys = [.. files.SelectMany(file => file.Columns.Where(column => column.AreAllDifferent && column.Filled == file.Table.Rows.Count && !column.HoldsDates), (file, column) => (file, column))];
    }

    /// <summary>The column of a file; null where none can be found.</summary>
    public AnimalColumn? Of(SuggestedFile file)
    {
        var named = file.Columns.Where(column => _meanings.IsHeaded(column, "animal")).ToList();
        var repeated = Repeated(file);
        if (named is [var only] && (repeated.Count == 0 || repeated.Exists(one => one.Column == only)))
        {
            var numbers = $"{only.Texts.Count} different";
            return new AnimalColumn(only, IsByIdentity: false, IsSure: true, repeated.Count == 0 ? numbers : $"{numbers}; every number of {Others(repeated, only)} is here");
        }

        if (repeated.Count == 0)
        {
            return named.Count == 0 ? null : new AnimalColumn(named[0], false, IsSure: false, $"{named[0].Texts.Count} different");
        }

        var found = repeated.FirstOrDefault(one => !_meanings.IsIdentity(one.Column));
        var column = found.Column ?? repeated[0].Column;
        var isByIdentity = _meanings.IsIdentity(column) || _meanings.IsIdentity(repeated.First(one => one.Column == column).Key);
        return new AnimalColumn(column, isByIdentity && file.Columns.All(other => !_meanings.IsHeaded(other, "animal")), repeated.DistinctBy(one => one.Column).Count() == 1 || isByIdentity,
            $"{column.Texts.Count} different; the numbers stand in {Others(repeated, column)} too");
    }

    /// <summary>Columns of a file whose texts are those of a column of different numbers in another file, or the other way round.</summary>
    private List<(ColumnProfile Column, SuggestedFile Other, ColumnProfile Key)> Repeated(SuggestedFile file)
    {
        var found = new List<(ColumnProfile, SuggestedFile, ColumnProfile)>();
        foreach (var (holder, key) in _keys)
        {
            if (holder != file)
            {
                found.AddRange(file.Columns.Where(column => !column.HoldsDates && AreOf(column, key)).Select(column => (column, holder, key)));
                continue;
            }

            found.AddRange(from other in _files
                           where other != file
                           from column in other.Columns
                           where !column.HoldsDates && AreOf(column, key)
                           select (key, other, key));
        }

        return found;
    }

    /// <summary>Whether the texts of a column are those of another: nine of ten, and more than a few.</summary>
    private static bool AreOf(ColumnProfile column, ColumnProfile key)
    {
        var shared = column.Texts.Keys.Count(key.Texts.ContainsKey);
        return shared >= 2 && 10 * shared >= 9 * column.Texts.Count && column.Texts.Keys.Any(text => text.Any(char.IsAsciiDigit));
    }

    private static string Others(List<(ColumnProfile Column, SuggestedFile Other, ColumnProfile Key)> repeated, ColumnProfile column) =>
        Phrases.And([.. repeated.Where(one => one.Column == column).Select(one => one.Other.Name).Distinct()]);
}
