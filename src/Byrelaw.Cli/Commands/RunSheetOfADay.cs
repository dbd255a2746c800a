using Byrelaw.Planning.Pairing;
using Byrelaw.Planning.Sessions;
using Byrelaw.Records.Ledger;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Cli.Commands;

/// <summary>
/// <c>byrelaw pair PROGRAMME</c>: the run sheet of a day of transfer. It is put into the ledger first, for a paper that nobody knows of would be worse than one that is only known of; then its files are written.
/// </summary>
internal sealed class RunSheetOfADay
{
    private readonly MorningAskedFor _asked;
    private readonly PairingAsked _pairing;
    private readonly IReadOnlyList<string> _race;
    private readonly Doors _doors;
    private Problems _problems = new();
    private DayOfTransfer? _day;
    private NumberedRunSheet? _sheet;
    private bool _isBroken;

    private RunSheetOfADay(MorningAskedFor asked, PairingAsked pairing, IReadOnlyList<string> race, Doors doors) => (_asked, _pairing, _race, _doors) = (asked, pairing, race, doors);

    public static int Write(MorningAskedFor asked, PairingAsked pairing, string? order, Doors doors)
    {
        if (asked.Besides.Count > 0)
        {
            throw new CannotDoException("give --on or --rehearse, not both");
        }

        asked.Check(doors);
        return new RunSheetOfADay(asked, pairing, order is null ? [] : RaceOrder(order, doors), doors).Write();
    }

    private static string[] RaceOrder(string order, Doors doors)
    {
        var bytes = RegularFile.Read(doors.Full(order)) ?? throw new CannotDoException($"no such file: {order}; --order wants one with the numbers in the order of the race, one a line");
        return Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
    }

    private int Write()
    {
        if (_asked.IsRehearsal)
        {
            Draw(ledger: null);
        }
        else
        {
            FilesTogether.Change(RecordsOf(), () => Draw(SheetLedger.In(RecordsOf())));
        }

        return _day is null ? ExitCode.Bad : Say();
    }

    /// <summary>Where the records lie: their folder is where sheets are known of.</summary>
    private string RecordsOf()
    {
        var reading = LoadedProgramme.ReadProgramme(_asked.Programme, knownOn: null, _doors.Folder, _ => { }, _doors.Today);
        return reading is null ? Path.GetDirectoryName(_doors.Full(_asked.Programme))! : RecordsFolder.Of(reading.Rulebook.Records!.Folder, _doors.Full(_asked.Programme));
    }

    /// <summary>Pairs by what is known now, and says what the ledger becomes.</summary>
    private FileToWrite[] Draw(SheetLedger? ledger)
    {
        (_day, _sheet, _isBroken) = (null, null, false);
        var drawing = new SheetsDrawn(_asked.Day, [RunSheet.Work], Path.GetFileName(_asked.Programme));
        var doors = _asked.IsRehearsal && _asked.Day > _doors.Today ? _doors with { Clock = new DayClock(_asked.Day) } : _doors;
        if (PlanCommand.Load(_asked.Programme, _asked.Day, KnownOn, _asked.RecordsTo, json: false, doors, out _problems, drawing) is not { } loaded)
        {
            return [];
        }

        var rulebook = loaded.Reading.Rulebook;
        if (RunSheet.Transfer(rulebook.Vocabulary) is null)
        {
            throw new CannotDoException("the rule files have no word for a transfer: declare one with `marks transfer`, as rulesets/vocabulary.byre does");
        }

        var earlier = Earlier(ledger, drawing);
        IReadOnlyList<OpenRow> open = earlier.IsEmpty ? [] : OpenOn(loaded, drawing);
        _day = Pairer.Pair(rulebook, loaded.Herd, SessionOn(rulebook.Programme!), Known(_pairing, loaded) with
        {
            Earlier = earlier.SelectMany(sheet => sheet.Rows).Where(row => row is { Embryo: not null, Animal: not null }).GroupBy(row => row.Embryo!).ToImmutableDictionary(rows => rows.Key, rows => rows.Last().Animal!),
        }, KnownOn);
        _isBroken = !_asked.IsRehearsal && loaded.Herd.LedgerIsBroken;
        if (_isBroken || _day.IsBroken || !_day.Short.IsEmpty)
        {
            return [];
        }

        var drawn = RunSheet.Of(_day, _race, open);
        if (drawn.Rows.IsEmpty)
        {
            return [];
        }

        var replacing = drawn with { Replaces = [.. earlier.Select(sheet => sheet.Number)] };
        var numbered = NumberedRunSheet.Of(replacing, ledger, other => IsUsedUp(other, drawing, open), _asked.IsRehearsal) with { By = _asked.By };
        var written = ledger ?? SheetLedger.Of([]);
        if (written.Sheets.Any(other => other.Number == numbered.Number))
        {
            // The same sheet again: it replaces nothing, and nothing of it is new.
            _sheet = numbered with { Drawn = drawn };
            return [];
        }

        _sheet = numbered;
        written = _asked.IsRehearsal ? written : written.With(replacing.InLedger(numbered.Number, Today, drawing.Programme!));
        return _asked.IsRehearsal ? [] : [new FileToWrite(SheetLedger.FileName, written.Bytes) { MadeFrom = ledger?.Bytes ?? default(ReadOnlyMemory<byte>) }];
    }

    private Session SessionOn(Programme programme) => Pairer.SessionOn(programme, _asked.Day) ?? throw new CannotDoException(
        $"the programme has no transfer on {LocalDatePattern.Iso.Format(_asked.Day)}{(Session.Of(programme) is { IsEmpty: false } sessions ? $"; it has them on {Phrases.And([.. sessions.Select(session => Dates.Range(session.FirstTransfer, session.FinalTransfer))])}. Where the day was moved, move it in the programme too" : "")}");

    /// <summary>Who is left out or taken besides must be on record.</summary>
    private static PairingAsked Known(PairingAsked asked, LoadedProgramme loaded)
    {
        foreach (var what in asked.Also.Concat(asked.Without))
        {
            if (loaded.Herd.Find(what) < 0 && (asked.Also.Contains(what) || loaded.Herd.Embryos.Find(what) is null))
            {
                var near = NearestName.To(what, [.. loaded.Herd.Numbers, .. asked.Also.Contains(what) ? [] : loaded.Herd.Embryos.Embryos.Select(embryo => embryo.Label)]);
                throw new CannotDoException($"there is no animal{(asked.Also.Contains(what) ? "" : " or embryo")} {what} on record{(near is null ? "" : $"; nearest: {near}")}");
            }
        }

        return asked;
    }

    private LocalDate Today => _asked.IsRehearsal ? _asked.Day : _doors.Today;

    /// <summary>Rehearsed on a day that is past, what was entered since is not seen.</summary>
    private LocalDate? KnownOn => _asked.IsRehearsal && _asked.Day < _doors.Today ? _asked.Day : null;

    /// <summary>A row of it is closed, or it is another programme's.</summary>
    private static bool IsUsedUp(Sheet sheet, SheetsDrawn drawing, IReadOnlyList<OpenRow> open) => sheet.Programme != drawing.Programme
        || sheet.Rows.Any(row => row.Writes.Any(entry => !open.Any(one => one.Sheet.Number == sheet.Number && one.Row.Row == row.Row && one.Entry == entry)));

    /// <summary>Run sheets of the same day and programme that are not void yet.</summary>
    private static ImmutableArray<Sheet> Earlier(SheetLedger? ledger, SheetsDrawn drawing) => ledger is null ? []
        : [.. ledger.Sheets.Where(sheet => drawing.Replaces(sheet.For, sheet.Work, sheet.Programme) && !ledger.Sheets.Any(other => other.Replaces.Contains(sheet.Number)))];

    /// <summary>What of them is open: that may have been done already.</summary>
    private OpenRow[] OpenOn(LoadedProgramme loaded, SheetsDrawn drawing)
    {
        var (folder, rulebook) = (RecordsOf(), loaded.Reading.Rulebook);
        var herd = HerdReader.Read(folder, _doors.Show(folder), rulebook.Vocabulary, rulebook.Records! with { Drawing = null });
        return [.. herd.OpenRows.Where(row => drawing.Replaces(row.Sheet.For, row.Sheet.Work, row.Sheet.Programme))];
    }

    private int Say()
    {
        var day = _day!;
        if (_isBroken || day.IsBroken || !day.Short.IsEmpty)
        {
            _doors.Err.WriteLine($"byrelaw: nobody is paired, and no run sheet is written. {(_isBroken ? OpenSheetWords.Broken : day.IsBroken ? "A rule of the recipients' list cannot be read: mend it first." : ShortWords.OfTransfer(day.Short, day.Day, _asked.RecordsTo >= day.Day))}");
            return ExitCode.Bad;
        }

        if (_sheet is not { } sheet)
        {
            _doors.Out.WriteLine($"Nobody may be given an embryo on {LocalDatePattern.Iso.Format(day.Day)}: no run sheet is written.");
            foreach (var not in day.Out)
            {
                _doors.Out.WriteLine($"  {not.Number}: {PairWords.WhyNot(day, not)}.");
            }

            return ExitCode.Bad;
        }

        var folder = _doors.Full(_asked.Out);
        _doors.Out.Write(sheet.OnTerminal(_doors.OutInk));
        _doors.Out.WriteLine();
        var rehearsed = !sheet.IsRehearsal ? [] : new[] { new FileToWrite(sheet.FileName + ".jsonl", SheetLedger.Of([]).With(sheet.Drawn.InLedger(sheet.Number, Today, Path.GetFileName(_asked.Programme))).Bytes) };
        var kept = SheetFiles.Write(folder, sheet.Files().Concat(rehearsed));
        _doors.Out.WriteLine($"Written into {_doors.Show(folder)}: {sheet.FileName}, as .html to print, .md, and as .csv and .xlsx to fill in.");
        foreach (var file in kept)
        {
            _doors.Out.WriteLine($"{_doors.Show(Path.Combine(folder, file))} is filled in already, and was left as it is.");
        }

        if (!_asked.IsRehearsal)
        {
            _doors.Out.Write(LogOfJudging.Add(day.Draft, "pair", _asked.Programme, _asked.By, _doors, sheet.Number));
        }

        return _problems.Ends(_doors);
    }
}
