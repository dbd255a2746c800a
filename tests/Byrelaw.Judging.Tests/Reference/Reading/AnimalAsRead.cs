namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A fact's cell: blank, read or unreadable.</summary>
public sealed record FactCell(bool IsBlank, decimal? Number, string? Text, int? Day)
{
    /// <summary>"A fact that no source has is not known, and so is `is recorded` of it."</summary>
    public static readonly FactCell NoColumn = new(true, null, null, null) { HasNoColumn = true };

    public static readonly FactCell Blank = new(true, null, null, null);
    public static readonly FactCell Unreadable = new(false, null, null, null);

    public bool HasNoColumn { get; init; }

    public bool IsKnown => Number is not null || Text is not null || Day is not null;

    public static FactCell Read(Fact fact, string cell)
    {
        if (cell.Length == 0)
        {
            return Blank;
        }

        return fact.Type switch
        {
            FactType.Number or FactType.Amount => new FactCell(false, CellReading.Number(cell), null, null),
            FactType.Date => new FactCell(false, null, null, CellReading.Day(cell)),
            // "A text outside a fact's declared values is an error in the record."
            FactType.OneOf => new FactCell(false, null, fact.Values.FirstOrDefault(value => NameFolding.Fold(value) == NameFolding.Fold(cell)), null),
            _ => new FactCell(false, null, cell, null),
        };
    }
}

/// <summary>What one row of <c>animals.csv</c> says.</summary>
public sealed record AnimalAsRead
{
    public required int Index { get; init; }

    public required string Number { get; init; }

    /// <summary>First possible day of birth; null where not known.</summary>
    public required int? BornFirst { get; init; }

    /// <summary>Last possible day of birth; null where not known.</summary>
    public required int? BornLast { get; init; }

    /// <summary>Something stands there that is no birth, or cannot be.</summary>
    public required bool BirthUnreadable { get; init; }

    /// <summary>True for F, false for M, null for anything else.</summary>
    public required bool? IsFemale { get; init; }

    /// <summary>"`sex` may be `steer`, who is none": no bull.</summary>
    public required bool IsSteer { get; init; }

    /// <summary>Folded; null where blank.</summary>
    public required string? Mob { get; init; }

    public required int? Parity { get; init; }

    public required bool ParityUnreadable { get; init; }

    /// <summary>The day that the parity is of; null where that cannot be read.</summary>
    public required int? ParityOn { get; init; }

    /// <summary>Whether a column says it.</summary>
    public required bool SaysParityOn { get; init; }

    /// <summary>By fact id.</summary>
    public required FactCell[] Facts { get; init; }

    public static AnimalAsRead Read(int index, AnimalRow row, PlainFarm farm, Vocabulary vocabulary)
    {
        var (first, last) = CellReading.Born(row.Born);
        var facts = vocabulary.Facts.Select(fact =>
        {
            var column = farm.FactNames.IndexOf(fact.Name);
            return column < 0 ? FactCell.NoColumn : FactCell.Read(fact, row.Facts[column]);
        });
        var parity = CellReading.Number(row.Parity) is { } number && number >= 0 && number == Math.Truncate(number) ? (int?)number : null;
        return new AnimalAsRead
        {
            Index = index,
            Number = row.Number,
            BornFirst = first,
            BornLast = last,
            BirthUnreadable = first is null && row.Born.Length > 0,
            IsFemale = row.Sex switch { "F" => true, "M" or "steer" => false, _ => null },
            IsSteer = row.Sex == "steer",
            Mob = row.Mob.Length == 0 ? null : NameFolding.Fold(row.Mob),
            Parity = parity,
            ParityUnreadable = parity is null && row.Parity.Length > 0,
            ParityOn = CellReading.Day(row.ParityOn),
            SaysParityOn = row.ParityOn.Length > 0,
            Facts = [.. facts],
        };
    }
}
