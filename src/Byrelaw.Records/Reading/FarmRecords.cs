namespace Byrelaw.Records.Reading;

/// <summary>A farm's records, opened once and put into the landed form, to be read under one supposition after the other.</summary>
public sealed class FarmRecords
{
    private readonly RecordInput _input;

    private FarmRecords(RecordInput input) => _input = input;

    /// <summary>The records in a folder.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">How the folder is named in messages: relative, forward slashes; empty for the current one.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says; null for nothing.</param>
    /// <param name="herd">Which herd, where they hold several.</param>
    /// <exception cref="RecordsNotFoundException">The folder, or one of the landed files, is missing.</exception>
    public static FarmRecords In(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, string? herd = null) =>
        new(RecordInput.In(folder, shownFolder, vocabulary, keeping, herd));

    /// <summary>The two landed files as texts in memory.</summary>
    public static FarmRecords Of((string Shown, byte[] Text) animals, (string Shown, byte[] Text) events) =>
        new(new RecordInput(RecordFile.Of(animals.Shown, animals.Text), RecordFile.Of(events.Shown, events.Text)));

    /// <summary>The herd, as if some rows stood in the records, or did not.</summary>
    public Herd Read(Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn, Supposed supposed) =>
        HerdReading.Read(_input, vocabulary, keeping, knownOn, ReadingOptions.Default, supposed).Herd;
}
