using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Animals;

/// <summary>Reads <c>animals.csv</c>.</summary>
internal sealed class AnimalFile
{
    private const int MostParity = 20;
    private readonly string _file;
    private readonly AnimalColumns _columns;
    private readonly MobNames _mobs;
    private readonly List<Diagnostic> _problems;
    private readonly AnimalStage _stage;
    private readonly SpellingTable _mobNumbers = new();
    private readonly MayBeParity? _mayBeParity;
    private bool _breaksOff;

    private AnimalFile(string file, AnimalColumns columns, Vocabulary vocabulary, MobNames mobs, List<Diagnostic> problems)
    {
        _file = file;
        _columns = columns;
        _mobs = mobs;
        _problems = problems;
        _stage = new AnimalStage([.. vocabulary.Facts.Select(fact => new FactStage(fact, columns.Facts[fact.Id], columns.FactIsDoubled[fact.Id]))], columns);
        _mayBeParity = columns.Map["parity"] < 0 && !columns.Map.IsDoubled("parity") ? new MayBeParity(columns.Map.Unknown, MostParity) : null;
    }

    /// <summary>Reads the whole file; null where nothing in it can be read.</summary>
    public static AnimalStage? Read(LineBlocks blocks, string file, Vocabulary vocabulary, MobNames mobs, List<Diagnostic> problems)
    {
        if (HeadingLine.Take(blocks, file) is not { } heading)
        {
            problems.Add(HeadingProblems.Empty(file, "`animal`, `born` and `sex`"));
            return null;
        }

        if (AnimalColumns.Read(heading, vocabulary, problems) is not { } columns)
        {
            return null;
        }

        var reader = new AnimalFile(file, columns, vocabulary, mobs, problems);
        var block = new LineBlock();
        while (blocks.TryNext(block))
        {
            reader.ReadBlock(block);
        }

        foreach (var place in reader._mayBeParity?.Places ?? [])
        {
            reader._stage.Rows[place] = reader._stage.Rows[place] with { Parity = -2 };
        }

        if (reader._breaksOff)
        {
            reader._stage.ForgetAll();
        }

        reader._stage.Doubted.AddRange(reader._stage.Facts.SelectMany(fact => fact.ImplausibleLines).Select(line =>
            (RowDoubt.Implausible, new RowInDoubt(-1, Day.Start, line, IsOfAnimals: true))));
        return reader._stage;
    }

    private void ReadBlock(LineBlock block)
    {
        using var rows = new CsvRows(block, _file, _columns.Map.CellCount, ReadBroken);
        while (rows.Read())
        {
            if (!rows.IsBlank)
            {
                ReadRow(rows);
            }
        }
    }

    /// <summary>Of a broken row only the number is saved, so that she is not taken for an animal that is not there.</summary>
    private void ReadBroken(RowText row)
    {
        var ends = BrokenRow.EndsTheFile(row, _columns.Map.CellCount);
        _problems.Add(ends && row.IsLastWithoutEnd ? RowProblems.FileBreaksOff(row, _columns.Map.CellCount) : RowProblems.Of(row, _columns.Map.CellCount));
        if (ends)
        {
            _breaksOff = true;
            _stage.Doubted.Add((RowDoubt.FileBreaksOff, new RowInDoubt(-1, Day.Start, row.Line, IsOfAnimals: true)));
        }

        if (row.Saved(_columns.Map["animal"]) is { Length: > 0 } number && !IsReserved(number))
        {
            AddUnreadable(number, row.Line);
        }
        else
        {
            _stage.RowsWithoutNumber++;
        }
    }

    private void AddUnreadable(string number, int line)
    {
        _stage.Numbers.Add(number);
        _stage.Rows.Add(AnimalRow.Unreadable(line));
        foreach (var fact in _stage.Facts)
        {
            fact.ReadNothing();
        }
    }

    private void ReadRow(CsvRows row)
    {
        var cell = _columns.Map["animal"];
        var number = Encoding.UTF8.GetString(row.Cell(cell));
        var cut = row.CutCell;
        if (cut >= 0)
        {
            _problems.Add(RowProblems.LastCellCut(row.Text(), cut));
            _stage.Doubted.Add((RowDoubt.LastCellCut, new RowInDoubt(-1, Day.Start, row.Line, IsOfAnimals: true)));
        }

        if (cut >= 0 && cut == cell)
        {
            _stage.RowsWithoutNumber++;
            return;
        }

        if (number.Length == 0 || IsReserved(number))
        {
            // What several go by is no further animal's.
            var among = Unreadable.NumbersIn(number);
            _problems.Add(among.Length > 1 ? AnimalProblems.OneOfSeveral(row.Text(), cell, Unreadable.Unmarked(number), among)
                : number.Length == 0 || Unreadable.Is(number) ? AnimalProblems.NoNumber(row.Text(), cell)
                : AnimalProblems.ReservedNumber(row.Text(), cell));
            _stage.RowsWithoutNumber += among.Length > 1 ? 0 : 1;
            return;
        }

        _stage.Numbers.Add(number);
        var (first, last) = IsCut("born") ? (Day.Start, Day.End) : Born(row);
        _stage.Rows.Add(new AnimalRow
        {
            Line = row.Line,
            BornFirst = first,
            BornLast = last,
            BirthIsUnreadable = first <= Day.Start && (row.Cell(_columns.Map["born"]).Length > 0 || _columns.Map.IsDoubled("born")),
            Sex = IsCut("sex") ? Sex.NotKnown : SexOf(row),
            Parity = IsCut("parity") ? -2 : ParityOf(row),
            ParityOn = IsCut("parity on") ? Day.Start : ParityOn(row),
            Mob = IsCut("mob") ? AnimalRow.MobUnreadable : MobOf(row),
        });
        _mayBeParity?.Read(row, _stage.Rows.Count - 1);
        foreach (var fact in _stage.Facts)
        {
            fact.Read(row, cut, _problems);
        }

        bool IsCut(string column) => cut >= 0 && cut == _columns.Map[column];
    }

    private (int First, int Last) Born(CsvRows row)
    {
        var cell = _columns.Map["born"];
        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            return (Day.Start, Day.End);
        }

        if (DateCell.TryReadSpan(text, out var first, out var last))
        {
            return (first, last);
        }

        _problems.Add(RecordDateProblems.NotABirth(row.Text(), cell));
        return (Day.Start, Day.End);
    }

    private Sex SexOf(CsvRows row)
    {
        var cell = _columns.Map["sex"];
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
            _problems.Add(FactProblems.Sex(row.Text(), cell));
        }

        return Sex.NotKnown;
    }

    private int ParityOf(CsvRows row)
    {
        var cell = _columns.Map["parity"];
        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            return _columns.Map.IsDoubled("parity") ? -2 : -1;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var parity) && parity <= MostParity)
        {
            return parity;
        }

        _problems.Add(FactProblems.Parity(row.Text(), cell));
        return -2;
    }

    private int ParityOn(CsvRows row)
    {
        var cell = _columns.Map["parity on"];
        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            return _columns.Map.IsDoubled("parity on") ? Day.Start : Day.End;
        }

        if (DateCell.TryRead(text, out var day))
        {
            return day;
        }

        _problems.Add(RecordDateProblems.NotADayOfParity(row.Text(), cell));
        return Day.Start;
    }

    private int MobOf(CsvRows row)
    {
        var text = row.Cell(_columns.Map["mob"]);
        if (BlankMob.Is(text))
        {
            _problems.Add(ValueProblems.NoMob(row.Text(), _columns.Map["mob"]));
            return AnimalRow.MobUnreadable;
        }

        if (text.IsEmpty)
        {
            return _columns.Map.IsDoubled("mob") ? AnimalRow.MobUnreadable : AnimalRow.NoMob;
        }

        if (!_mobNumbers.TryFind(text, out var mob))
        {
            mob = _mobs.NumberOf(text);
            _mobNumbers.Set(text, mob);
        }

        return mob;
    }

    /// <summary>Whether no animal goes by it: by what cannot be read none does.</summary>
    private static bool IsReserved(string number) => Unreadable.Is(number) ||
        number.Equals("herd", StringComparison.OrdinalIgnoreCase) || number.StartsWith("mob:", StringComparison.OrdinalIgnoreCase);
}
