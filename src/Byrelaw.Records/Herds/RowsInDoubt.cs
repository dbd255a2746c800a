namespace Byrelaw.Records.Herds;

/// <summary>Why rows are doubted though nobody made a promise about them.</summary>
public enum RowDoubt
{
    /// <summary>Two rows that became one.</summary>
    TwoInOne,

    /// <summary>The file breaks off in this row.</summary>
    FileBreaksOff,

    /// <summary>The file ends without a line end: the last cell may be cut.</summary>
    LastCellCut,

    /// <summary>A decimal comma may have moved the cells.</summary>
    CommaInNumber,

    /// <summary>A day more than a year after all others, where nobody says how far the records reach.</summary>
    FarAhead,
}

/// <summary>A row of one of the two files.</summary>
/// <param name="Animal">Whose; -1 where that cannot be read, or is not asked.</param>
/// <param name="Day">When; <see cref="Day.Start"/> where that cannot be read.</param>
/// <param name="Line">From 1.</param>
/// <param name="IsOfAnimals">Whether it stands in <c>animals.csv</c>.</param>
public readonly record struct RowInDoubt(int Animal, int Day, int Line, bool IsOfAnimals = false);

/// <summary>Rows that are doubted for one reason.</summary>
public sealed record RowsInDoubt(RowDoubt Why, ImmutableArray<RowInDoubt> Rows) : Doubted;
