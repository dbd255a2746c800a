using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Support;

/// <summary>Reads records written in a test.</summary>
internal static class Read
{
    public const string Animals = """
        animal,born,sex
        1001,2019-08-12,F
        1002,2020-07-30,F
        1003,2021-08,F
        1004,,F
        2001,2022-09-01,M
        """;

    /// <summary>Both files as written; without a records block only animals' births and the last entry say what is known.</summary>
    public static Herd Herd(string events, string animals = Animals, RecordKeeping? keeping = null, string? knownOn = null) =>
        HerdReader.Read(Bytes(Whole(animals)), Bytes(Whole(events)), Words.Vocabulary, keeping, knownOn is null ? null : Words.Date(knownOn));

    /// <summary>Rows under the usual heading, in four columns.</summary>
    public static Herd Events(params string[] rows) => Herd(Heading(rows));

    /// <summary>Rows under a heading of date, animal, kind, value and unit.</summary>
    public static string Heading(params string[] rows) => "date,animal,kind,value,unit\n" + string.Join('\n', rows) + "\n";

    /// <summary>The same in blocks of a few bytes, with several threads.</summary>
    public static Herd InBlocks(string animals, string events, int blockSize, int threads = 3) => HerdReading.Read(
        new RecordInput(RecordFile.Of("animals.csv", Bytes(Whole(animals))), RecordFile.Of("events.csv", Bytes(Whole(events)))),
        Words.Vocabulary, null, null, new ReadingOptions(blockSize, threads)).Herd;

    /// <summary>With a line end at the end, without which a file may be cut.</summary>
    public static string Whole(string text) => text.Length == 0 || text[^1] is '\n' or '\r' ? text : text + "\n";

    public static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
