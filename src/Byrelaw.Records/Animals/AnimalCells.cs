namespace Byrelaw.Records.Animals;

/// <summary>Reads the cells of an animal's row that stand in every herd's file. For one thread.</summary>
/// <param name="columns">Where they stand.</param>
/// <param name="mobs">Gives mobs their numbers.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class AnimalCells(AnimalColumns columns, MobNames mobs, List<Diagnostic> problems)
{
    /// <summary>No cow has calved more often.</summary>
    public const int MostParity = 20;

    private readonly SpellingTable _mobNumbers = new();

    /// <summary>The days on which she may have been born; all where that cannot be read.</summary>
    public (int First, int Last) Born(CsvRows row)
    {
        var cell = columns.Map["born"];
        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            return (Day.Start, Day.End);
        }

        if (DateCell.TryReadSpan(text, out var first, out var last))
        {
            return (first, last);
        }

        problems.Add(RecordDateProblems.NotABirth(row.Text(), cell));
        return (Day.Start, Day.End);
    }

    /// <summary>Her sex.</summary>
    public Sex SexOf(CsvRows row)
    {
        var cell = columns.Map["sex"];
        var text = row.Cell(cell);
        if (text.Length == 1 && (text[0] | 0x20) is 'f' or 'm')
        {
            return (text[0] | 0x20) == 'f' ? Sex.Female : Sex.Male;
        }

        if (Ascii.EqualsIgnoreCase(text, "steer"u8))
        {
            return Sex.Steer;
        }

        if (!text.IsEmpty)
        {
            problems.Add(FactProblems.Sex(row.Text(), cell));
        }

        return Sex.NotKnown;
    }

    /// <summary>How often she has calved; -1 for a blank cell, -2 where it cannot be read.</summary>
    public int ParityOf(CsvRows row)
    {
        var cell = columns.Map["parity"];
        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            return columns.Map.IsDoubled("parity") ? -2 : -1;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var parity) && parity <= MostParity)
        {
            return parity;
        }

        problems.Add(FactProblems.Parity(row.Text(), cell));
        return -2;
    }

    /// <summary>The day that her parity is of, as <see cref="AnimalRow.ParityOn"/>.</summary>
    public int ParityOn(CsvRows row)
    {
        var cell = columns.Map["parity on"];
        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            return columns.Map.IsDoubled("parity on") ? Day.Start : Day.End;
        }

        if (DateCell.TryRead(text, out var day))
        {
            return day;
        }

        problems.Add(RecordDateProblems.NotADayOfParity(row.Text(), cell));
        return Day.Start;
    }

    /// <summary>The mob she is in, as <see cref="AnimalRow.Mob"/>.</summary>
    public int MobOf(CsvRows row)
    {
        var text = row.Cell(columns.Map["mob"]);
        if (NotKnownCell.Is(text))
        {
            problems.Add(ValueProblems.NoMob(row.Text(), columns.Map["mob"]));
            return AnimalRow.MobUnreadable;
        }

        if (text.IsEmpty)
        {
            return columns.Map.IsDoubled("mob") ? AnimalRow.MobUnreadable : AnimalRow.NoMob;
        }

        if (!_mobNumbers.TryFind(text, out var mob))
        {
            mob = mobs.NumberOf(text);
            _mobNumbers.Set(text, mob);
        }

        return mob;
    }
}
