using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Records.Herds;
using NodaTime;

namespace Byrelaw.Records.Reading;

/// <summary>Reads a folder of records into a herd.</summary>
public static class HerdReader
{
    /// <summary>Reads <c>animals.csv</c> and <c>events.csv</c>. What cannot be read is reported in
    /// <see cref="Herd.Problems"/> and suspends what it might have said.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">How the folder is named in messages: relative, forward slashes; empty for the current one.</param>
    /// <param name="vocabulary">The words the rows may use.</param>
    /// <param name="keeping">What the farm says is complete; null for nothing.</param>
    /// <param name="knownOn">Rows entered after this day are not seen; null for all rows.</param>
    /// <exception cref="RecordsNotFoundException">The folder or one of the two files is missing.</exception>
    public static Herd Read(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null) =>
        throw new NotImplementedException();

    /// <summary>The same from texts in memory, for tests and other doors.</summary>
    public static Herd Read(byte[] animals, byte[] events, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null) =>
        throw new NotImplementedException();
}
