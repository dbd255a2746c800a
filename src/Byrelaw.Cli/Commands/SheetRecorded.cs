using Byrelaw.Planning.Entering;
using Byrelaw.Records.Entering;
using Byrelaw.Records.Ledger;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Cli.Commands;

/// <summary>
/// Records one sheet. Everything is read and judged while nobody else writes; the rows, the ledger and a copy of the sheet come into their places in one step, or none of them does.
/// </summary>
internal sealed class SheetRecorded
{
    private const string Kept = "recorded";

    private readonly SheetToRecord _asked;
    private readonly Doors _doors;
    private readonly Problems _problems = new();
    private SheetOutcome? _outcome;
    private ImmutableArray<WrongButDone> _wrong = [];
    private ImmutableArray<TimedHeat> _heats = [];
    private IReadOnlyList<int> _open = [];
    private IReadOnlyList<string> _notReadable = [];
    private string? _copy;
    private bool _isVoid;
    private bool _isBroken;
    private Sheet? _rehearsed;
    private byte[]? _ledgerBefore;

    private SheetRecorded(SheetToRecord asked, Doors doors) => (_asked, _doors) = (asked, doors);

    public static int Run(SheetToRecord asked, Doors doors)
    {
        if (asked.Recorded > doors.Today)
        {
            throw new CannotDoException($"--recorded {LocalDatePattern.Iso.Format(asked.Recorded.Value)} is to come; today is {LocalDatePattern.Iso.Format(doors.Today)}");
        }

        if (asked.NotDone is not null && string.IsNullOrWhiteSpace(asked.NotDone))
        {
            throw new CannotDoException("--not-done wants the reason, such as --not-done \"rain\"");
        }

        return new SheetRecorded(asked, doors).Run();
    }

    /// <summary>A rehearsal's sheet is written into a copy of the farm, as if its day were today: nobody was given anything, and the farm's own book says so.</summary>
    private int Rehearse(FilledSheet filled)
    {
        if (_asked.Out is null)
        {
            throw new CannotDoException($"{_asked.Sheet} is a rehearsal's: it is written into a copy of the farm. Say where that is to lie, with --out DIR");
        }

        var kept = Path.Combine(Path.GetDirectoryName(_doors.Full(_asked.Sheet))!, filled.Number!.Replace(' ', '-') + ".jsonl");
        if (RegularFile.Read(kept) is not { } bytes || SheetLedger.Of(bytes) is not { IsBroken: false, Sheets: [var sheet] } || sheet.Number != filled.Number)
        {
            throw new CannotDoException($"beside a rehearsal's sheet lies {Path.GetFileName(kept)}, which says what stands on it; it is not there, or was changed. Draw the rehearsal again");
        }

        var copy = FarmCopy.Into(_asked.Programme, _asked.Out, _doors);
        var doors = _doors with { Clock = new DayClock(LocalDate.Max(sheet.For, _doors.Today)), KeepsLog = false };
        _doors.Out.WriteLine($"{NumberedSheet.Rehearsal}: written into a copy, {_doors.Show(copy)}. The farm's own records are as they were.");
        return new SheetRecorded(_asked with { Programme = copy, Out = null, Recorded = _asked.Recorded ?? sheet.For }, doors) { _rehearsed = sheet }.Run();
    }

    private int Run()
    {
        var filled = _asked.NotDone is null ? Filled() : null;
        if (_asked.NotDone is null && filled is null)
        {
            return ExitCode.Bad;
        }

        var isRehearsal = filled?.Number?.StartsWith(NumberedSheet.Rehearsal, StringComparison.Ordinal) == true;
        if (isRehearsal && _rehearsed is null)
        {
            return Rehearse(filled!);
        }

        if (_asked.Out is not null)
        {
            throw new CannotDoException($"--out is for a rehearsal's sheet; {_asked.Sheet} is none, and is written into the farm's own records");
        }

        var reading = LoadedProgramme.ReadProgramme(_asked.Programme, knownOn: null, _doors.Folder, _problems.Add, _doors.Today);
        _problems.Print(_doors);
        if (reading is null)
        {
            _doors.Err.WriteLine($"{_problems.Counted()}. Nothing is recorded until the rule files can be read.");
            return ExitCode.Bad;
        }

        var folder = RecordsFolder.Of(reading.Rulebook.Records!.Folder, _doors.Full(_asked.Programme));
        if (!Directory.Exists(folder))
        {
            throw new CannotDoException($"there is no folder {_doors.Show(folder)}");
        }

        FilesTogether.Change(folder, () => Record(reading.Rulebook, folder, filled));
        return _isBroken ? Refuse() : Say(folder);
    }

    private FilledSheet? Filled()
    {
        var full = _doors.Full(_asked.Sheet);
        var bytes = RegularFile.Read(full) ?? throw new CannotDoException($"no such file: {_asked.Sheet}{(LooksLikeANumber(_asked.Sheet) ? "; a sheet's number goes with --not-done \"why\"" : "")}");
        var filled = FilledSheet.Read(_doors.Show(full), bytes, out var problem);
        if (problem is not null)
        {
            Tell([problem]);
        }

        return filled;
    }

    private FileToWrite[] Record(Rulebook rulebook, string folder, FilledSheet? filled)
    {
        (_outcome, _wrong, _heats, _open, _notReadable, _copy, _isVoid, _isBroken) = (null, [], [], [], [], null, false, false);
        _ledgerBefore = null;
        var records = new RecordsAddedTo(folder, _doors.Show(folder), rulebook.Vocabulary, rulebook.Records!, _doors.Today, _asked.Recorded ?? _doors.Today) { Herd = _asked.Herd }.AsItStands();
        if (_rehearsed is { } rehearsed && records.Ledger is not { IsBroken: true } && records.Ledger?.Sheets.Any(sheet => sheet.Number == rehearsed.Number) != true)
        {
            records = records with { Ledger = (records.Ledger ?? SheetLedger.Of([])).With(rehearsed) };
            _ledgerBefore = RegularFile.Read(Path.Combine(folder, SheetLedger.FileName)) ?? [];
        }

        var before = RecordsFolder.Read(rulebook, folder, _doors.Show(folder), herd: _asked.Herd);
        if (before.LedgerIsBroken)
        {
            _isBroken = true;
            return [];
        }

        var outcome = filled is not null ? SheetRecorder.Of(records, filled) : NotDone(records, before);
        if (!outcome.IsRefused)
        {
            var after = outcome.Herd(records);
            _heats = TimedHeats.Of(after, rulebook.Plans, outcome.Entries, records.Today);
            outcome = outcome with { Entries = [.. outcome.Entries, .. _heats.Where(heat => heat.WhyNot is null).Select(heat => heat.Entry(TimedHeats.KindOf(rulebook.Vocabulary)!))] };
            _open = [.. after.OpenRows.Where(row => row.Sheet.Number == outcome.Sheet.Number).Select(row => row.Row.Row).Distinct()];
            _wrong = Wrong(rulebook, folder, outcome);
            _isVoid = outcome.Ledger.Sheets.Any(sheet => !sheet.IsWithdrawal && sheet.Replaces.Contains(outcome.Sheet.Number));
        }

        _outcome = outcome;
        return [.. Files(records, outcome, filled)];
    }

    /// <summary>What changes on disk: nothing where nothing is new.</summary>
    private IEnumerable<FileToWrite> Files(RecordsAddedTo records, SheetOutcome outcome, FilledSheet? filled)
    {
        var isNewInLedger = _ledgerBefore is not null || outcome.Ledger.Sheets.Length > (records.Ledger?.Sheets.Length ?? 0);
        var isNew = !outcome.IsRefused && (outcome.Entries.Length > 0 || outcome.Filled > 0);
        if (!isNew && !isNewInLedger)
        {
            yield break;
        }

        if (isNew)
        {
            yield return new FileToWrite(HerdReader.EventsFile, outcome.Written(outcome.Entries)) { MadeFrom = records.Events ?? default(ReadOnlyMemory<byte>) };
        }

        if (isNewInLedger)
        {
            yield return new FileToWrite(SheetLedger.FileName, outcome.Ledger.Bytes) { MadeFrom = _ledgerBefore ?? records.Ledger?.Bytes ?? default(ReadOnlyMemory<byte>) };
        }

        if (filled is not null)
        {
            _copy = CopyName(records, outcome, filled);
            yield return new FileToWrite(_copy, outcome.ToMend ?? filled.Bytes);
        }

        var log = Path.Combine(records.Folder, Kept, "recorded.csv");
        var old = RegularFile.Read(log);
        yield return new FileToWrite($"{Kept}/recorded.csv", (byte[])[
            .. old ?? Encoding.UTF8.GetBytes(Csv.Record("recorded", "sheet", "by", "copy", "rows", "not done")),
            .. Encoding.UTF8.GetBytes(Csv.Record(
                LocalDatePattern.Iso.Format(records.Recorded), outcome.Sheet.Number, PlainText.Clean(_asked.By ?? ""), outcome.IsRefused ? "refused" : _copy is null ? "" : Path.GetFileName(_copy),
                $"{outcome.Entries.Count(entry => !entry.IsNotDone)}", $"{outcome.Entries.Count(entry => entry.IsNotDone)}")),
        ])
        {
            MadeFrom = old ?? default(ReadOnlyMemory<byte>),
        };
    }

    /// <summary>By the day of entry and the number; a later copy of one day gets a number of its own.</summary>
    private static string CopyName(RecordsAddedTo records, SheetOutcome outcome, FilledSheet filled)
    {
        var name = $"{Kept}/{LocalDatePattern.Iso.Format(records.Recorded)}-{outcome.Sheet.Number.Replace(' ', '-')}{(outcome.IsRefused ? "-refused" : "")}";
        var ending = filled.IsWorkbook && outcome.ToMend is null ? ".xlsx" : ".csv";
        for (var copy = 1; ; copy++)
        {
            var path = copy == 1 ? name + ending : $"{name}-{copy}{ending}";
            if (!Path.Exists(Path.Combine(records.Folder, path)))
            {
                return path;
            }
        }
    }

    private SheetOutcome NotDone(RecordsAddedTo records, Herd before)
    {
        var sheets = records.Ledger?.Sheets ?? [];
        var number = _asked.Sheet;
        if (sheets.All(sheet => sheet.Number != number))
        {
            var (papers, near) = (sheets.Where(sheet => !sheet.IsWithdrawal).ToList(), NearestName.To(number, sheets.Where(sheet => !sheet.IsWithdrawal).Select(sheet => sheet.Number)));
            throw new CannotDoException($"no such sheet: {number}; {(near is not null ? $"nearest: {near}" : papers.Count == 0 ? "no sheet was written yet" : $"the last that was written is {papers[^1].Number}")}");
        }

        OpenRow[] open = [.. before.OpenRows.Where(row => row.Sheet.Number == number)];
        _notReadable = sheets.First(sheet => sheet.Number == number).IsOwn ? [] : [.. open.Where(row => row.Row.Animal is null || row.Animal < 0 || row.Kind < 0).Select(row => $"{row.Row.Row}").Distinct()];
        return SheetRecorder.NotDone(records, number, open, _asked.NotDone!);
    }

    /// <summary>Held to what was known without this sheet: being on it is no reason to doubt what was done by it.</summary>
    private ImmutableArray<WrongButDone> Wrong(Rulebook rulebook, string folder, SheetOutcome outcome)
    {
        if (rulebook.Programme is null || outcome.Entries.All(entry => entry.IsNotDone))
        {
            return [];
        }

        var sheet = outcome.Sheet;
        var without = rulebook with { Records = rulebook.Records! with { Drawing = new SheetsDrawn(sheet.For, [sheet.Work], sheet.Programme) } };
        return WrongButDone.Of(rulebook, RecordsFolder.Read(without, folder, _doors.Show(folder), herd: _asked.Herd), sheet, outcome.Entries);
    }

    private int Refuse()
    {
        _doors.Err.WriteLine($"byrelaw: nothing is recorded. {OpenSheetWords.Broken}");
        return ExitCode.Bad;
    }

    private int Say(string folder)
    {
        var outcome = _outcome!;
        if (outcome.Problems.Length > 0)
        {
            Tell(outcome.Problems);
        }

        if (outcome.IsRefused)
        {
            _doors.Err.WriteLine($"Nothing of {outcome.Sheet.Number} is written, and it stays open: who stands on it is in doubt until it is mended and recorded."
                + (_copy is null ? "" : $" It has the number {outcome.Sheet.Number} now. Mend it in {_doors.Show(Path.Combine(folder, _copy))}, and record that file."));
            return ExitCode.Bad;
        }

        if (_isVoid)
        {
            _doors.Err.WriteLine($"{outcome.Sheet.Number} was made void by a later sheet of that morning; what was done by it stands on record, and closes those rows there too.");
        }

        foreach (var wrong in _wrong)
        {
            _doors.Err.WriteLine(RecordText.Of(wrong));
        }

        _doors.Out.Write(RecordText.Of(outcome, _open));
        foreach (var heat in _heats)
        {
            _doors.Out.WriteLine(RecordText.Of(heat));
        }

        if (_notReadable.Count > 0)
        {
            _doors.Out.WriteLine($"Rows {Phrases.And(_notReadable)} cannot be closed so, for nobody can read whose they are: mend the file in {_doors.Show(Path.Combine(folder, Kept))}, and record that.");
        }

        if (_copy is not null)
        {
            _doors.Out.WriteLine($"A copy of the sheet is kept: {_doors.Show(Path.Combine(folder, _copy))}");
        }

        return ExitCode.Done;
    }

    private void Tell(IEnumerable<Diagnostic> problems)
    {
        var told = new Problems();
        told.Add(problems);
        told.Print(_doors);
    }

    private static bool LooksLikeANumber(string text) => text.Length > 6 && char.IsAsciiLetterUpper(text[0]) && text[5] == '-' && text[1..5].All(char.IsAsciiDigit);
}
