namespace Byrelaw.Records.Doubts;

/// <summary>Records read and looked over.</summary>
/// <param name="Herd">The herd; what could not be read is in its problems.</param>
/// <param name="Doubts">Warnings about what could be read and is hard to believe, by file and line. They suspend nothing.</param>
public sealed record RecordsCheck(Herd Herd, ImmutableArray<Diagnostic> Doubts)
{
    /// <summary>Reads and looks over a folder of records, as <see cref="HerdReader"/> does.</summary>
    /// <exception cref="RecordsNotFoundException">The folder or one of the two files is missing.</exception>
    public static RecordsCheck Read(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null, string? herd = null) =>
        Check(RecordInput.In(folder, shownFolder, vocabulary, keeping, herd), vocabulary, keeping, knownOn);

    /// <summary>The same from texts in memory.</summary>
    public static RecordsCheck Read(byte[] animals, byte[] events, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn = null) =>
        Check(new RecordInput(RecordFile.Of(HerdReader.AnimalsFile, animals), RecordFile.Of(HerdReader.EventsFile, events)), vocabulary, keeping, knownOn);

    /// <summary>The same from whatever the records are read from.</summary>
    internal static RecordsCheck Check(RecordInput input, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn)
    {
        var reading = HerdReading.Read(input, vocabulary, keeping, knownOn, ReadingOptions.Default);
        Doubt[] doubts = [.. Find(reading)];
        var ofAnimals = DoubtTexts.Of([.. doubts.Where(doubt => doubt.Cell == DoubtfulCell.RowOfAnimals)], input.Animals, columns: null);
        var ofEvents = DoubtTexts.Of([.. doubts.Where(doubt => doubt.Cell != DoubtfulCell.RowOfAnimals)], input.Events, reading.EventColumns);
        return new RecordsCheck(reading.Herd, input.Places is not { } places ? [.. ofAnimals, .. ofEvents]
            : [.. ofAnimals.Select(doubt => places.Of(doubt, ofAnimals: true)), .. ofEvents.Select(doubt => places.Of(doubt, ofAnimals: false))]);
    }

    private static IEnumerable<Doubt> Find(HerdReading reading)
    {
        var herd = reading.Herd;
        return
        [
            .. CalvedAgainSoon.Find(herd),
            .. TooYoung.Find(herd),
            .. AfterLeaving.Find(herd),
            .. ParityAgainstCalvings.Find(herd),
            .. TwoResultsOnOneDay.Find(herd),
            .. SameIdentity.Find(herd),
            .. EndWithoutStart.Find(herd),
            .. reading.Stages.SelectMany(OddRows.Find),
        ];
    }
}
