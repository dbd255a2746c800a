using Byrelaw.Planning;
using Byrelaw.Planning.Sheets;
using Byrelaw.Records.Ledger;
using Byrelaw.Reporting.Plans;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Cli.Commands;

/// <summary>
/// <c>byrelaw plan PROGRAMME --sheet DAY</c>: the papers with boxes of a morning. Each is put into the ledger first, for a paper that nobody knows of would be worse than one that
/// is only known of; then its files are written.
/// </summary>
internal sealed class SheetsOfAMorning
{
    private static readonly ImmutableArray<string> Works = [.. new[] { SheetWork.Hormones, SheetWork.Scans, SheetWork.Samples }.Select(DrawnSheet.LetterOf)];

    private readonly MorningAskedFor _asked;
    private readonly Doors _doors;
    private Plan? _plan;
    private Problems _problems = new();
    private ImmutableArray<NumberedSheet> _sheets = [];
    private ImmutableArray<DrawnSheet> _previews = [];
    private bool _isBroken;

    private SheetsOfAMorning(MorningAskedFor asked, Doors doors) => (_asked, _doors) = (asked, doors);

    public static int Write(MorningAskedFor asked, Doors doors)
    {
        asked.Check(doors);
        return new SheetsOfAMorning(asked, doors).Write();
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

        return _plan is null ? ExitCode.Bad : _isBroken ? Refuse() : Say();
    }

    /// <summary>Where the records lie: their folder is where sheets are known of.</summary>
    private string RecordsOf()
    {
        var reading = LoadedProgramme.ReadProgramme(_asked.Programme, knownOn: null, _doors.Folder, _ => { }, _doors.Today);
        return reading is null ? Path.GetDirectoryName(_doors.Full(_asked.Programme))! : RecordsFolder.Of(reading.Rulebook.Records!.Folder, _doors.Full(_asked.Programme));
    }

    /// <summary>Draws the sheets by what is known now, and says what the ledger becomes.</summary>
    private FileToWrite[] Draw(SheetLedger? ledger)
    {
        (_sheets, _previews, _isBroken) = ([], [], false);
        var drawing = new SheetsDrawn(_asked.Day, Works, Path.GetFileName(_asked.Programme));
        if (Load(drawing) is not { } loaded)
        {
            return [];
        }

        _plan = Planner.Plan(loaded.Reading.Rulebook, loaded.Herd, _asked.Day, KnownOn);
        if (!_asked.IsRehearsal && loaded.Herd.LedgerIsBroken)
        {
            _isBroken = true;
            return [];
        }

        var earlier = Earlier(ledger, drawing);
        var open = _asked.Day > Today || earlier.IsEmpty ? [] : OpenOn(loaded, drawing, earlier);
        var drawn = DrawnSheets.Of(_plan, _asked.Day, open);
        _previews = [.. drawn.Where(sheet => !sheet.Short.IsEmpty || IsTooEarly)];
        if (IsTooEarly)
        {
            return [];
        }

        var (written, rows) = (ledger ?? SheetLedger.Of([]), drawn.Where(sheet => !sheet.Rows.IsEmpty).ToList());
        foreach (var sheet in rows)
        {
            var replacing = sheet with { Replaces = [.. earlier.Where(other => ReferenceEquals(sheet, DrawnSheets.Successor(other, rows))).Select(other => other.Number)] };
            var numbered = NumberedSheet.Of(_plan, replacing, ledger, other => IsUsedUp(other, drawing, open, Today), _asked.IsRehearsal);
            if (written.Sheets.All(other => other.Number != numbered.Number))
            {
                written = written.With(replacing.InLedger(numbered.Number, Today, drawing.Programme!));
                _sheets = _sheets.Add(numbered);
            }
            else
            {
                // The same sheet again: it replaces nothing, and nothing of it is new.
                _sheets = _sheets.Add(numbered with { Drawn = sheet });
            }
        }

        return _asked.IsRehearsal || written.Sheets.Length == (ledger?.Sheets.Length ?? 0) ? [] : [new FileToWrite(SheetLedger.FileName, written.Bytes) { MadeFrom = ledger?.Bytes ?? default(ReadOnlyMemory<byte>) }];
    }

    /// <summary>A row of it is closed, or it is another programme's.</summary>
    private static bool IsUsedUp(Sheet sheet, SheetsDrawn drawing, IReadOnlyList<OpenRow> open, LocalDate today) => sheet.Programme != drawing.Programme
        || (sheet.For <= today && sheet.Rows.Any(row => row.Writes.Any(entry => !open.Any(one => one.Sheet.Number == sheet.Number && one.Row.Row == row.Row && one.Entry == entry))));

    private LocalDate Today => _asked.IsRehearsal ? _asked.Day : _doors.Today;

    /// <summary>Boxes on a paper of next week are ticked: it is drawn up again that morning, or the evening before.</summary>
    private bool IsTooEarly => _asked.Day > Today.PlusDays(1);

    /// <summary>Rehearsed on a day that is past, what was entered since is not seen.</summary>
    private LocalDate? KnownOn => _asked.IsRehearsal && _asked.Day < _doors.Today ? _asked.Day : null;

    private LoadedProgramme? Load(SheetsDrawn drawing)
    {
        var doors = _asked.IsRehearsal && _asked.Day > _doors.Today ? _doors with { Clock = new DayClock(_asked.Day) } : _doors;
        return PlanCommand.Load(_asked.Programme, _asked.Day, KnownOn, _asked.RecordsTo, json: false, doors, out _problems, drawing);
    }

    /// <summary>Sheets of the same morning, work and programme that are not void yet.</summary>
    private static ImmutableArray<Sheet> Earlier(SheetLedger? ledger, SheetsDrawn drawing) => ledger is null ? []
        : [.. ledger.Sheets.Where(sheet => drawing.Replaces(sheet.For, sheet.Work, sheet.Programme) && !ledger.Sheets.Any(other => other.Replaces.Contains(sheet.Number)))];

    /// <summary>What of them is open: that may have been done already.</summary>
    private IReadOnlyList<OpenRow> OpenOn(LoadedProgramme loaded, SheetsDrawn drawing, ImmutableArray<Sheet> earlier)
    {
        var (folder, rulebook) = (RecordsOf(), loaded.Reading.Rulebook);
        var herd = HerdReader.Read(folder, _doors.Show(folder), rulebook.Vocabulary, rulebook.Records! with { Drawing = null });
        return [.. herd.OpenRows.Where(row => drawing.Replaces(row.Sheet.For, row.Sheet.Work, row.Sheet.Programme) || earlier.Any(sheet => sheet.Number == row.Sheet.Number))];
    }

    private int Refuse()
    {
        _doors.Err.WriteLine($"byrelaw: no sheet is written. {OpenSheetWords.Broken}");
        return ExitCode.Bad;
    }

    private int Say()
    {
        var folder = _doors.Full(_asked.Out);
        foreach (var sheet in _sheets)
        {
            _doors.Out.Write(sheet.OnTerminal(_plan!, _doors.OutInk));
            _doors.Out.WriteLine();
        }

        if (_sheets.Length > 0)
        {
            var kept = SheetFiles.Write(folder, _sheets.SelectMany(sheet => sheet.Files(_plan!)).Concat(Rehearsed()));
            _doors.Out.WriteLine($"Written into {_doors.Show(folder)}: {Phrases.And([.. _sheets.Select(sheet => sheet.FileName)])}, each as .html to print, .md, and as .csv and .xlsx to fill in.");
            foreach (var file in kept)
            {
                _doors.Out.WriteLine($"{_doors.Show(Path.Combine(folder, file))} is filled in already, and was left as it is.");
            }
        }

        foreach (var preview in _previews)
        {
            _doors.Out.WriteLine(Why(preview));
        }

        if (_previews.Length > 0)
        {
            FilesTogether.Write(folder, [.. _previews.SelectMany(preview => PlanReport.Preview(_plan!, preview.Morning))]);
            _doors.Out.WriteLine($"A preview of each, without a box or a number, lies in {_doors.Show(folder)}.");
        }

        if (_sheets.IsEmpty && _previews.IsEmpty)
        {
            _doors.Out.WriteLine($"Nothing is to be done on {LocalDatePattern.Iso.Format(_asked.Day)} that has a sheet of this kind: none is written.{Next()}");
        }

        if (!_asked.IsRehearsal)
        {
            _doors.Out.Write(LogOfJudging.Add(_plan!.Draft, "plan", _asked.Programme, _asked.By, _doors, [.. _sheets.Select(sheet => sheet.Number)]));
        }

        return _previews.IsEmpty ? _problems.Ends(_doors) : ExitCode.Bad;
    }

    /// <summary>What stands on a rehearsal's sheets, for record: no ledger knows of them.</summary>
    private IEnumerable<FileToWrite> Rehearsed() => !_asked.IsRehearsal ? []
        : _sheets.Select(sheet => new FileToWrite(sheet.FileName + ".jsonl", SheetLedger.Of([]).With(sheet.Drawn.InLedger(sheet.Number, Today, Path.GetFileName(_asked.Programme))).Bytes));

    private string Why(DrawnSheet preview) => IsTooEarly
        ? $"A preview only: {LocalDatePattern.Iso.Format(_asked.Day)} is to come, and what is ticked on a paper of next week stays ticked. Draw it up again that morning, or the evening before."
        : $"A preview only of session {preview.Morning.Session.Number}: {ShortWords.Of(preview.Short, preview.Morning.Date)} Bring the records up to date; or, where nothing more happened, say so: --records-to {LocalDatePattern.Iso.Format(_asked.Day.PlusDays(-1))}.";

    private string Next() => MorningSheets.Of(_plan!).Where(sheet => sheet.Work != SheetWork.Transfer && sheet.Date > _asked.Day).Select(sheet => (LocalDate?)sheet.Date).Min() is { } next
        ? $" The next morning with one is {LocalDatePattern.Iso.Format(next)}." : "";
}
