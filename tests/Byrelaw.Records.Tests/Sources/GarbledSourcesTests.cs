using Byrelaw.Records.Sources;
using Byrelaw.Testing.Workbooks;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>Whatever bytes stand in a source, reading ends, and ends without a fault: what cannot be read is told, and puts in doubt what it might have said.</summary>
/// <remarks>With <c>BYRELAW_TIMES</c> this is the fuzzing of the readers of text, workbooks and messages.</remarks>
public sealed class GarbledSourcesTests
{
    private static readonly byte[] Text = Encoding.UTF8.GetBytes("No;Born;Served;PD;Scanned\n1;09/02/2020;01/09/2026;E;20/08/2026\n2;\"17/08/2021\";;P;\n3;08/2020;1/9/26;-;2026\n");

    private static readonly byte[] Workbook = MadeWorkbook.Of(("Cows", MadeWorkbook.Row(1, "No", "Born", "Served", "PD", "Scanned")
        + "<row r=\"2\"><c r=\"A2\"><v>1</v></c><c r=\"B2\" s=\"1\"><v>43870</v></c><c r=\"C2\" t=\"e\"><v>#N/A</v></c><c r=\"D2\" t=\"str\"><f>A1</f><v>E</v></c><c r=\"E2\"><f>B1</f></c></row>"
        + MadeWorkbook.Row(4, "2", "17/08/2021", "01/09/2026", "P", "1/9/2026")));

    private static readonly byte[] Messages = Encoding.UTF8.GetBytes("""
        { "view": { "totalItems": 2 }, "member": [
          { "resourceType": "icarAnimalCoreResource", "identifier": { "id": "1", "scheme": "x" }, "gender": "Female", "birthDate": "2020-08-01T00:00:00Z" },
          { "id": "a", "inseminationType": "RunWithBull", "animal": { "id": "1" }, "eventDateTime": "2026-01-02T23:00:00+13:00", "eventEndDateTime": null, "sireIdentifiers": [ { "id": "7" } ], "meta": { "isDeleted": false, "modified": "2026-01-02" } },
          { "id": "a", "resourceType": "icarReproPregnancyCheckEventResource", "animal": { "id": "1" }, "eventDateTime": "2026-02-10", "method": "Visual", "result": "Empty" } ] }
        """);

    // Bytes that mean something to one of the readers.
    private static readonly byte[][] Signs = [[0], [0xFF], [0xFF, 0xFE], "\uFEFF"u8.ToArray(), "\""u8.ToArray(), ";"u8.ToArray(), "\n"u8.ToArray(), "\r"u8.ToArray(), "<"u8.ToArray(), ">"u8.ToArray(), "&#0;"u8.ToArray(), "&x;"u8.ToArray(), "}"u8.ToArray(), "["u8.ToArray(), "null"u8.ToArray(), "\\uD800"u8.ToArray(), "1e999"u8.ToArray(), "-1"u8.ToArray(), "99999999999"u8.ToArray(), "A9999999"u8.ToArray()];

    private static readonly Gen<(int Place, int Length, int Sign)[]> Accidents = Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.Int[0, 19]).Array[1, 4];

    [Fact]
    public void A_text() => Accidents.Hold(accidents => Read(Garbled(Text, accidents), "from \"x\", separated by semicolons, a row for each animal, as at 2026-09-25"), count: 300);

    [Fact]
    public void A_workbook_torn_as_it_lies() => Accidents.Hold(accidents => Read(Garbled(Workbook, accidents), "from \"x\", a row for each animal, as at 2026-09-25"), count: 150);

    [Fact]
    public void A_workbook_with_garbled_parts() => Accidents.Hold(
        accidents =>
        {
            var parts = MadeWorkbook.Parts(Workbook);
            var part = accidents[0].Place % parts.Length;
            parts[part].Text = Encoding.Latin1.GetString(Garbled(Encoding.Latin1.GetBytes(parts[part].Text), accidents));
            Read(MadeWorkbook.Zip(parts), "from \"x\", a row for each animal, as at 2026-09-25");
        },
        count: 150);

    [Fact]
    public void Messages_of_the_exchange() => Accidents.Hold(accidents => Read(Garbled(Messages, accidents), "from \"x\", as layout \"ICAR ADE\", times in \"Pacific/Auckland\"", isAde: true), count: 300);

    [Fact]
    public void A_packed_text() => Accidents.Hold(
        accidents =>
        {
            using var packed = new MemoryStream();
            using (var gzip = new System.IO.Compression.GZipStream(packed, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
            {
                gzip.Write(accidents[0].Sign % 2 == 0 ? Garbled(Text, accidents) : Text);
            }

            Read(accidents[0].Sign % 2 == 0 ? packed.ToArray() : Garbled(packed.ToArray(), accidents), "from \"x\", separated by semicolons, a row for each animal, as at 2026-09-25");
        },
        count: 300);

    [Fact]
    public void The_lines_about_it() => Accidents.Hold(
        accidents =>
        {
            var rules = FarmFiles.Rules(Encoding.UTF8.GetString(Garbled(Encoding.UTF8.GetBytes(Block), accidents)));
            if (rules.Rulebook.Records is { } keeping)
            {
                var input = SourceReader.Read(_ => Text, file => file, rules.Rulebook.Vocabulary, keeping);
                _ = HerdReading.Read(input, rules.Rulebook.Vocabulary, keeping, null, ReadingOptions.Default).Herd;
            }
        },
        count: 150);

    [Fact]
    public void Lines_suggested_for_it() => Accidents.Hold(
        accidents => Byrelaw.Records.Suggesting.RecordsSuggester.Suggest(
            "records", [("a.csv", Garbled(Text, accidents)), ("b.xlsx", Garbled(Workbook, accidents)), ("c.json", Garbled(Messages, accidents))], FarmFiles.Rules(Block).Rulebook.Vocabulary, new NodaTime.LocalDate(2026, 10, 4)).ShouldContain("records \"records\""),
        count: 100);

    private const string Block = """
        event calving
        event mating  with method is one of natural, inseminated, with sire is text
        measure weight  in kg
        test pregnancy test  answers pregnant, empty, with method is one of ultrasound, hand, blank is hand
        fact official identity  is identity

        records "records"
          up to 2026-10-04
          complete for mating since 2026-01-01
          leave out rain
          from "x", separated by semicolons, a row for each animal, as at 2026-09-25
            dates day first
            short years
            animal in "No"
            official identity in "Served", in kg
            born in "Born"
            last mating in "Served", blank is none since last calving
            last calving in "Born", blank is never
            pregnancy test in "PD", dated in "Scanned"
              - "E" where "No" is "1" is empty
              - "P" is pregnant
            leave out rows where "PD" is "-"
          from "y.xlsx", sheet "Cows", headings in rows 2 to 3, in Windows-1252, separated by bars, a row for each event, up to 2026-09-25
            decimal comma
            animal in "No", by official identity
            date in "Born"
            kind in "PD"
              - "P" is pregnancy test, pregnant, method is ultrasound
              - "W" is weight, value in "Served", in g, times 0.1
              - "X" is left out
            leave out columns "A", "B"
          from "ade", as layout "ICAR ADE", times in "Pacific/Auckland"
            kind in "what"
              - "Weight" is left out
          same animal "1", "2"

        """;

    private static byte[] Garbled(byte[] whole, (int Place, int Length, int Sign)[] accidents)
    {
        var bytes = whole.ToList();
        foreach (var (place, length, sign) in accidents)
        {
            var at = bytes.Count == 0 ? 0 : place % bytes.Count;
            switch (length % 4)
            {
                case 0:
                    bytes.RemoveRange(at, Math.Min(length, bytes.Count - at));
                    break;
                case 1:
                    bytes.InsertRange(at, Signs[sign]);
                    break;
                case 2:
                    bytes.InsertRange(at, bytes.GetRange(at, Math.Min(length * 5, bytes.Count - at)));
                    break;
                default:
                    bytes.RemoveRange(sign == 0 ? at : Math.Min(at + 1, bytes.Count), sign == 0 ? bytes.Count - at : 0);
                    break;
            }
        }

        return [.. bytes];
    }

    private static readonly RulebookReading[] Rules = new RulebookReading[3];

    private static void Read(byte[] bytes, string from, bool isAde = false)
    {
        var place = isAde ? 2 : from.Contains("separated", StringComparison.Ordinal) ? 1 : 0;
        var rules = Rules[place] ??= RulebookReader.Read("farm.byre", new OneFile(
            "event mating  with method is one of natural, inseminated\nevent bull in\nevent bull out\ntest pregnancy test  answers pregnant, empty\n\nrecords\n  up to 2026-10-04\n  " + from
            + (isAde ? "\n" : "\n    dates day first\n    short years\n    animal in \"No\"\n    born in \"Born\"\n    last mating in \"Served\", blank is never\n    pregnancy test in \"PD\", dated in \"Scanned\"\n      - \"E\" is empty\n      - \"P\" is pregnant\n")))!;
        DiagnosticText.Of(rules.Problems).ShouldBe("");
        var input = SourceReader.Read(_ => bytes, file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
        var herd = HerdReading.Read(input, rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd;
        foreach (var problem in herd.Problems)
        {
            problem.File.ShouldStartWith("x");
            problem.Line.ShouldBeGreaterThan(0);
        }
    }
}
