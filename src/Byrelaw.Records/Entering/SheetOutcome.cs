namespace Byrelaw.Records.Entering;

/// <summary>What comes of a sheet that is recorded.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Entries">Rows to be added, in order.</param>
/// <param name="AlreadyThere">How many entries stood there before.</param>
/// <param name="Filled">How many blank cells of rows that stood there are filled in.</param>
/// <param name="Problems">What is wrong; an error, and nothing is written.</param>
/// <param name="Ledger">The ledger as it would be.</param>
/// <param name="Written">Gives the file of events with entries added.</param>
public sealed record SheetOutcome(
    Sheet Sheet, ImmutableArray<RecordedEntry> Entries, int AlreadyThere, int Filled, ImmutableArray<Diagnostic> Problems, SheetLedger Ledger, Func<IReadOnlyList<RecordedEntry>, byte[]> Written)
{
    /// <summary>Whether it is somebody's own file, with a number given to it here.</summary>
    public bool IsOwn { get; init; }

    /// <summary>Whether it was taken by mistake, and nothing of it is in doubt any more.</summary>
    public bool IsWithdrawn { get; init; }

    /// <summary>Whether anything is wrong, so that nothing of it is written.</summary>
    public bool IsRefused => Problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>A refused file of somebody's own with its number and rows filled in, to be mended; null for any other.</summary>
    public byte[]? ToMend { get; init; }

    /// <summary>Rows that are ticked and have no answer: they stay open.</summary>
    public ImmutableArray<(int Row, Kind Kind)> Unanswered { get; init; } = [];

    /// <summary>The herd as it would be afterwards, with the promises as written.</summary>
    public Herd Herd(RecordsAddedTo records)
    {
        ArgumentNullException.ThrowIfNull(records);
        return HerdReading.Read(
            RecordInput.In(records.Folder, records.ShownFolder, records.Vocabulary, records.Keeping, records.Herd, new RecordsInstead(Written(Entries), Ledger)), records.Vocabulary, records.Keeping, null, ReadingOptions.Default).Herd;
    }
}

/// <summary>A folder of records that is written to.</summary>
/// <param name="Folder">On disk.</param>
/// <param name="ShownFolder">As messages name it.</param>
/// <param name="Vocabulary">The words.</param>
/// <param name="Keeping">What the farm says of them.</param>
/// <param name="Today">What day it is.</param>
/// <param name="Recorded">The day of entry.</param>
public sealed record RecordsAddedTo(string Folder, string ShownFolder, Vocabulary Vocabulary, RecordKeeping Keeping, LocalDate Today, LocalDate Recorded)
{
    /// <summary>The bytes of <c>events.csv</c>; null where there is none.</summary>
    public byte[]? Events { get; init; }

    /// <summary>The ledger; null where there is none.</summary>
    public SheetLedger? Ledger { get; init; }

    /// <summary>Which herd, where the records hold several.</summary>
    public string? Herd { get; init; }

    /// <summary>How messages name <c>events.csv</c>.</summary>
    public string ShownEvents => ShownFolder.Length == 0 ? HerdReader.EventsFile : $"{ShownFolder.TrimEnd('/')}/{HerdReader.EventsFile}";

    /// <summary>As the folder stands.</summary>
    public RecordsAddedTo AsItStands() => this with { Events = RegularFile.Read(Path.Combine(Folder, HerdReader.EventsFile)), Ledger = SheetLedger.In(Folder) };
}
