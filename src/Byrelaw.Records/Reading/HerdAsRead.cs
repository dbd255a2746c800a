using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Reading;

/// <summary>The records of a folder as they are read, for others to use: the two landed files, whatever the farm's own look like.</summary>
public sealed class HerdAsRead
{
    private readonly byte[] _animals;
    private readonly byte[] _events;

    private HerdAsRead(RecordInput input) => (_animals, _events) = (All(input.Animals), All(input.Events));

    /// <summary>Reads a folder.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">How the folder is named in messages: relative, forward slashes; empty for the current one.</param>
    /// <param name="vocabulary">The words the rows may use.</param>
    /// <param name="keeping">What the farm says of its records; null for nothing.</param>
    /// <param name="herd">Which herd, where sources hold several; null for the one.</param>
    /// <exception cref="RecordsNotFoundException">The folder, one of its files or the herd is missing.</exception>
    public static HerdAsRead Of(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, string? herd = null) =>
        new(RecordInput.In(folder, shownFolder, vocabulary, keeping, herd));

    /// <summary>The same from what was opened already.</summary>
    internal static HerdAsRead Of(RecordInput input) => new(input);

    /// <summary><c>animals.csv</c> and <c>events.csv</c>. A cell that cannot be read keeps its text, behind a sign that no other program writes: so it stays one.</summary>
    public ImmutableArray<FileToWrite> AsCsv() => [new FileToWrite(HerdReader.AnimalsFile, _animals), new FileToWrite(HerdReader.EventsFile, _events)];

    /// <summary>One workbook with a sheet for each of the two, all cells as texts.</summary>
    public ImmutableArray<FileToWrite> AsWorkbook() =>
        [new FileToWrite("herd.xlsx", WorkbookWriter.Of([("animals", Rows(_animals)), ("events", Rows(_events))]))];

    /// <summary>The rows of a file, headings first. In a workbook every row has all its cells: one that falls apart has none that can be read.</summary>
    private static IEnumerable<string[]> Rows(byte[] file)
    {
        using var reader = new StreamReader(new MemoryStream(file, writable: false), Encoding.UTF8);
        string[]? headings = null;
        for (var line = reader.ReadLine(); line is not null; line = reader.ReadLine())
        {
            var cells = CellSplitter.Split(line, ',');
            string[] values = [.. cells.Select(cell => cell.Value)];
            headings ??= values;
            yield return cells.Count == headings.Length && cells.TrueForAll(cell => cell.Flaw == CellFlaw.None) ? values
                : [.. headings.Select((_, column) => Unreadable.Of(column < values.Length ? values[column] : ""))];
        }
    }

    private static byte[] All(RecordFile file)
    {
        using var stream = file.Open();
        using var whole = new MemoryStream();
        stream.CopyTo(whole);
        return whole.ToArray();
    }
}
