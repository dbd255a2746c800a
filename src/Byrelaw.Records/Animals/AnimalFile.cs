using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Animals;

/// <summary>Reads <c>animals.csv</c>.</summary>
internal sealed class AnimalFile
{
    private readonly string _file;
    private readonly AnimalColumns _columns;
    private readonly List<Diagnostic> _problems;
    private readonly AnimalStage _stage;
    private readonly AnimalCells _cells;
    private readonly MayBeParity? _mayBeParity;
    private readonly AnimalHints _hints;
    private bool _breaksOff;

    private AnimalFile(string file, AnimalColumns columns, Vocabulary vocabulary, RecordKeeping? keeping, MobNames mobs, List<Diagnostic> problems)
    {
        _file = file;
        _hints = new AnimalHints(columns, vocabulary, keeping);
        _columns = columns;
        _problems = problems;
        _cells = new AnimalCells(columns, mobs, problems);
        _stage = new AnimalStage([.. vocabulary.Facts.Select(fact => new FactStage(fact, columns.Facts[fact.Id], columns.FactIsDoubled[fact.Id]))], columns);
        _mayBeParity = columns.Map["parity"] < 0 && !columns.Map.IsDoubled("parity") ? new MayBeParity(columns.Map.Unknown, AnimalCells.MostParity) : null;
    }

    /// <summary>Reads the whole file; null where nothing in it can be read.</summary>
    public static AnimalStage? Read(LineBlocks blocks, string file, Vocabulary vocabulary, RecordKeeping? keeping, MobNames mobs, List<Diagnostic> problems)
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

        var reader = new AnimalFile(file, columns, vocabulary, keeping, mobs, problems);
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
        var (first, last) = IsCut("born") ? (Day.Start, Day.End) : _cells.Born(row);
        _stage.Rows.Add(new AnimalRow
        {
            Line = row.Line,
            BornFirst = first,
            BornLast = last,
            BirthIsUnreadable = first <= Day.Start && (row.Cell(_columns.Map["born"]).Length > 0 || _columns.Map.IsDoubled("born")),
            Sex = IsCut("sex") ? Sex.NotKnown : _cells.SexOf(row),
            Parity = IsCut("parity") ? -2 : _cells.ParityOf(row),
            ParityOn = IsCut("parity on") ? Day.Start : _cells.ParityOn(row),
            Mob = IsCut("mob") ? AnimalRow.MobUnreadable : _cells.MobOf(row),
            Hints = _hints.Of(row),
        });
        _mayBeParity?.Read(row, _stage.Rows.Count - 1);
        foreach (var fact in _stage.Facts)
        {
            fact.Read(row, cut, _problems);
        }

        bool IsCut(string column) => cut >= 0 && cut == _columns.Map[column];
    }

    /// <summary>Whether no animal goes by it: by what cannot be read none does.</summary>
    private static bool IsReserved(string number) => Unreadable.Is(number) ||
        number.Equals("herd", StringComparison.OrdinalIgnoreCase) || number.StartsWith("mob:", StringComparison.OrdinalIgnoreCase) || number.StartsWith("embryo:", StringComparison.OrdinalIgnoreCase);
}
