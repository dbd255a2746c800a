using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Records.Building;

/// <summary>Whether an entry is one that a filter means.</summary>
internal enum Fit : byte
{
    /// <summary>Surely not.</summary>
    No,

    /// <summary>A detail that would tell is blank or cannot be read.</summary>
    Perhaps,

    /// <summary>Surely.</summary>
    Yes,
}

/// <summary>Holds the details of entries to a filter.</summary>
internal static class DetailFit
{
    /// <summary>Whether the entry on a line is meant: all tests together, before the day is looked at.</summary>
    public static Fit Of(KindFilter filter, int line, EntryDetails details)
    {
        var fit = Fit.Yes;
        foreach (var test in filter.Tests)
        {
            var one = Of(test, details.Of(line, test.Place), details.BlankOf(filter.Of, test.Place), details.HasColumn(filter.Of, test.Place));
            fit = one < fit ? one : fit;
        }

        return fit;
    }

    /// <summary>Whether an entry is meant that stands in no file.</summary>
    /// <param name="filter">Which are meant.</param>
    /// <param name="cell">What it says of a detail, by its place; missing where it says nothing.</param>
    /// <param name="details">What blank cells mean on this farm.</param>
    public static Fit Of(KindFilter filter, Func<int, DetailCell> cell, EntryDetails details)
    {
        var fit = Fit.Yes;
        foreach (var test in filter.Tests)
        {
            var one = Of(test, cell(test.Place), details.BlankOf(filter.Of, test.Place), details.HasColumn(filter.Of, test.Place));
            fit = one < fit ? one : fit;
        }

        return fit;
    }

    /// <summary>Whether the entries of one day are meant: where they differ, it may be either.</summary>
    public static Fit Together(Fit one, Fit other) => one == other ? one : Fit.Perhaps;

    private static Fit Of(DetailTest test, in DetailCell cell, string? blankOnFarm, bool hasColumn)
    {
        var blank = blankOnFarm ?? (test.Detail.BlankIs >= 0 ? test.Detail.Values[test.Detail.BlankIs] : null);
        var isFilled = cell.State == FactState.Missing && blank is not null;
        switch (test)
        {
            case DetailRecorded:
                return cell.State switch { FactState.Known => Fit.Yes, FactState.Missing when isFilled || hasColumn => Yes(isFilled), _ => Fit.Perhaps };
            case DetailIs one when isFilled:
                return Yes(Has(one.Values, blank!) != one.IsNot);
            case DetailIs one when cell.State == FactState.Known:
                var text = test.Detail.Type == FactType.Date ? Day.Date((int)cell.Number).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) : cell.Text ?? "";
                return Yes(Has(one.Values, text) != one.IsNot);
            case DetailNumber number when cell.State == FactState.Known:
                return Yes(Holds(number.Test, cell.Number) != number.IsNot);
            default:
                return Fit.Perhaps;
        }
    }

    private static bool Has(ImmutableArray<string> values, string text)
    {
        var folded = NameFolding.Fold(text);
        foreach (var value in values)
        {
            if (NameFolding.Fold(value) == folded)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Holds(NumberTest test, double number) => test.Comparison switch
    {
        Comparison.AtLeast => number >= test.Low.Value,
        Comparison.AtMost => number <= test.Low.Value,
        Comparison.MoreThan => number > test.Low.Value,
        Comparison.LessThan => number < test.Low.Value,
        Comparison.Exactly => number == test.Low.Value,
        _ => number >= test.Low.Value && number <= test.High.Value,
    };

    private static Fit Yes(bool holds) => holds ? Fit.Yes : Fit.No;
}
