namespace Byrelaw.Records.Reading;

/// <summary>Reads a folder of records into a herd.</summary>
public static class HerdReader
{
    /// <summary>The animals' file in a folder of records.</summary>
    public const string AnimalsFile = "animals.csv";

    /// <summary>The events' file in a folder of records.</summary>
    public const string EventsFile = "events.csv";

    /// <summary>Reads <c>animals.csv</c> and <c>events.csv</c>. What cannot be read is reported in
    /// <see cref="Herd.Problems"/> and suspends what it might have said.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">How the folder is named in messages: relative, forward slashes; empty for the current one.</param>
    /// <param name="vocabulary">The words the rows may use.</param>
    /// <param name="keeping">What the farm says is complete; null for nothing.</param>
    /// <param name="knownOn">Rows entered after this day are not seen; null for all rows.</param>
    /// <param name="herd">Which herd, where sources hold several; null for the one.</param>
    /// <exception cref="RecordsNotFoundException">The folder, one of the two files or the herd is missing, or there are several herds and none is asked for.</exception>
    public static Herd Read(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null, string? herd = null) =>
        HerdReading.Read(RecordInput.In(folder, shownFolder, vocabulary, keeping, herd), vocabulary, keeping, knownOn, ReadingOptions.Default).Herd;

    /// <summary>The same from texts in memory, for tests and other doors.</summary>
    public static Herd Read(byte[] animals, byte[] events, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null) =>
        Read((AnimalsFile, animals), (EventsFile, events), vocabulary, keeping, knownOn);

    /// <summary>The same with a ledger of sheets.</summary>
    public static Herd Read(byte[] animals, byte[] events, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn, SheetLedger ledger) => HerdReading.Read(
        new RecordInput(RecordFile.Of(AnimalsFile, animals), RecordFile.Of(EventsFile, events)) { Ledger = ledger }, vocabulary, keeping, knownOn, ReadingOptions.Default).Herd;

    /// <summary>The same for texts that go by other names in messages and evidence.</summary>
    public static Herd Read(
        (string Shown, byte[] Text) animals, (string Shown, byte[] Text) events, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null) =>
        HerdReading.Read(
            new RecordInput(RecordFile.Of(animals.Shown, animals.Text), RecordFile.Of(events.Shown, events.Text)),
            vocabulary, keeping, knownOn, ReadingOptions.Default).Herd;

    /// <summary>The same from texts in memory, as if some rows stood in them, or did not.</summary>
    public static Herd Read(
        (string Shown, byte[] Text) animals, (string Shown, byte[] Text) events, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn, Supposed supposed) =>
        HerdReading.Read(
            new RecordInput(RecordFile.Of(animals.Shown, animals.Text), RecordFile.Of(events.Shown, events.Text)),
            vocabulary, keeping, knownOn, ReadingOptions.Default, supposed).Herd;

    /// <summary>A file in a folder of records.</summary>
    /// <exception cref="RecordsNotFoundException">There is no such folder or file.</exception>
    internal static RecordFile FileIn(string folder, string shownFolder, string name)
    {
        var path = Path.Combine(folder, name);
        var shown = shownFolder.Length == 0 ? name : $"{shownFolder.TrimEnd('/')}/{name}";
        if (!Directory.Exists(folder))
        {
            throw new RecordsNotFoundException($"there is no folder {(shownFolder.Length == 0 ? folder : shownFolder)}");
        }

        return RegularFile.Exists(path) ? RecordFile.At(shown, path) : throw new RecordsNotFoundException($"there is no file {shown}");
    }

    /// <summary>The same where it need not be there; null where it is not.</summary>
    internal static RecordFile? IfThere(string folder, string shownFolder, string name) => RegularFile.Exists(Path.Combine(folder, name)) ? FileIn(folder, shownFolder, name) : null;
}
