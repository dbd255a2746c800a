using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Suggesting;

/// <summary>In which column the results of some rows stand: the one that most of these rows have filled with what the kind asks for.</summary>
/// <param name="declared">The column headed <c>value</c>, which is read without a word; null for none.</param>
/// <param name="detail">The column headed as results often are; null for none.</param>
/// <param name="rest">Every column that says nothing else yet.</param>
internal sealed class ResultColumns(ColumnProfile? declared, ColumnProfile? detail, IReadOnlyList<ColumnProfile> rest)
{
    /// <summary>The column headed <c>value</c> itself; null for none.</summary>
    public ColumnProfile? Declared => declared;

    /// <summary>The column for a kind; null where none holds its results, or where they are read without a word.</summary>
    public ColumnProfile? For(Kind kind, SourceRow[] rows)
    {
        ColumnProfile?[] inOrder = [declared, detail, .. rest.OrderBy(column => kind is EventKind { IsMobMove: true } && KindOfFile.IsHeadedMob(column) ? NameFolding.Fold(column.Name).Contains("to", StringComparison.Ordinal) ? 0 : 1 : 2)];
        var best = inOrder.OfType<ColumnProfile>().Distinct().Select(column => (Column: column, Fit: rows.Count(row => Fits(kind, row[column.Index])))).DefaultIfEmpty().MaxBy(one => one.Fit);
        return best.Fit * 2 <= rows.Length ? detail : best.Column == declared ? null : best.Column;
    }

    private static bool Fits(Kind kind, string cell) => cell.Length > 0 && kind switch
    {
        MeasureKind => ColumnProfile.IsNumber(cell),
        TestKind test => AnswerHints.Find(cell, test) is not null,
        _ => cell.Any(char.IsLetter) && !ColumnProfile.IsDate(cell),
    };
}
