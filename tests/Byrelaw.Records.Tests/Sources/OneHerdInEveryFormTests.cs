using System.Globalization;
using System.IO.Compression;
using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>
/// One made-up herd, written as farms' programs write theirs (other headings, other words, other dates, other signs, other files), is the same
/// herd: of every animal the same is on record, and the same is not known.
/// </summary>
public sealed class OneHerdInEveryFormTests
{
    private const string Promises = """
          up to 2025-12-31
          complete for heat, mating, weight, body condition, BVD virus since 2025-12-03

        """;

    // Number, identity, birth, sex, breed, mature weight.
    private static readonly string[][] Animals =
    [
        ["1", "554000000000001", "2020-01-09", "F", "Friesian", "540.5"],
        ["2", "554000000000002", "2021-02-28", "F", "", "500"],
        ["3", "554000000000003", "2022", "F", "Jersey", ""],
        ["4", "554000000000004", "", "M", "Jersey", "?"],
    ];

    // Date, animal, kind, value, unit, method, sire.
    private static readonly Gen<string[]> Row =
        from day in Gen.Int[1, 30]
        from wrong in Gen.Int[0, 19]
        from who in Gen.OneOf("1", "2", "3", "4", "4", "9")
        from what in Gen.OneOf(
            "heat,,,,", "mating,,,natural,Bull A", "mating,,,inseminated,", "mating,,,,", "mating,,,jumped,",
            "weight,500.5,kg,,", "weight,<3,kg,,", "weight,pending,,,", "weight,5O0,kg,,",
            "body condition,4.5,,,", "body condition,12,,,", "body condition,,,,",
            "BVD virus,positive,,,", "BVD virus,negative,,,", "BVD virus,pending,,,", "BVD virus,perhaps,,,", "rain,,,,")
        select (string[])[wrong == 0 ? $"2025-13-{day:00}" : wrong == 1 ? "" : $"2025-12-{day:00}", who, .. what.Split(',')];

    [Fact]
    public void Semicolons_other_words_the_day_first_and_a_decimal_comma() => Each.Hold(
        Row.Array[1, 9], 300, rows => Differs(rows, """
              from "cows.csv", separated by semicolons, a row for each animal
                dates day first
                decimal comma
                animal in "No"
                official identity in "EID"
                born in "DOB"
                sex in "Sex"
                  - "cow" is F
                  - "bull" is M
                breed in "Race"
                  - "FR" is Friesian
                  - "JE" is Jersey
                mature weight in "LW"
              from "diary.csv", separated by semicolons, a row for each event
                dates day first
                decimal comma
                date in "Date"
                animal in "No"
                kind in "Code"
                  - "HT" is heat
                  - "AI" is mating
                  - "WT" is weight, in kg
                  - "CS" is body condition
                  - "BVD" is BVD virus
                value in "Result"
                  - "+" is positive
                  - "neg" is negative
                  - "9999" is pending
                method in "How"
                  - "N" is natural
                  - "I" is inseminated
                sire in "Bull"
            """,
            ("cows.csv", Bytes("No;EID;DOB;Sex;Race;LW\n" + Lines(Animals.Select(animal => string.Join(';', animal[0], animal[1], DayFirst(animal[2]), Of(animal[3], "F=cow,M=bull"), Of(animal[4], "Friesian=FR,Jersey=JE"), animal[5].Replace('.', ',')))))),
            ("diary.csv", Bytes("Date;No;Code;Result;How;Bull\n" + Lines(rows.Select(row => string.Join(
                ';', DayFirst(row[0]), row[1], Of(row[2], "heat=HT,mating=AI,weight=WT,body condition=CS,BVD virus=BVD"),
                Of(row[3].Replace('.', ','), "positive=+,negative=neg,pending=9999"), Of(row[5], "natural=N,inseminated=I"), row[6])))))),
        Text);

    [Fact]
    public void A_laboratorys_sheet_by_tag_a_workbooks_letters_and_short_years() => Each.Hold(
        Row.Array[1, 9], 300, rows => Differs(rows, """
              from "herd.txt", separated by tabs, headings in row 3, a row for each animal
                animal in "Line"
                official identity in "Tag"
                born in "Born"
                breed in "Breed"
                mature weight in "Grown", times 0.5
              from "sex.csv", a row for each animal
                animal in "tag", by official identity
                sex in "what"
              from "book.csv.gz", separated by bars, in Windows-1252, a row for each event
                dates month first
                short years
                animal in "Cow"
                date in "Däy"
                kind in "What"
                  - "served" where "By" is "bull" is mating, method is natural, sire in "Name"
                  - "served" where "By" is "straw" is mating, method is inseminated, sire in "Name"
                  - "served" is mating, method in "By", sire in "Name"
                  - "scale" is weight, value in "Name", in kg
                  - "seen" is heat
                  - "score" is body condition, value in "Name"
                leave out rows where "Name" is "struck out"
                leave out columns "Page"
              from "lab.csv", a row for each event
                animal in "tag", by official identity
                date in "sampled"
                BVD virus in "BVD"
                  - "POS" is positive
                  - "NEG" is negative
                  - "to come" is pending
            """,
            ("herd.txt", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("Our herd\n\nLine\tTag\tBorn\tBreed\tGrown\n" + Lines(Animals.Select(animal => string.Join('\t', animal[0], animal[1], animal[2], animal[4], Twice(animal[5])))))]),
            ("sex.csv", Bytes("tag,what\n" + Lines(Animals.Select(animal => $"{Spaced(animal[1])},{animal[3]}")))),
            ("book.csv.gz", Packed(Encoding.Latin1.GetBytes("Cow|Däy|What|By|Name|Page\n" + Lines(rows.Where(row => row[2] != "BVD virus").Select(row => string.Join(
                '|', row[1], MonthFirst(row[0]), Of(row[2], "heat=seen,mating=served,weight=scale,body condition=score"),
                Of(row[5], "natural=bull,inseminated=straw"), row[2] == "mating" ? row[6] : row[3], "7"))) + "1|01/01/25|seen||struck out|8\n"))),
            ("lab.csv", Bytes("tag,sampled,BVD\n" + Lines(rows.Where(row => row[2] == "BVD virus").Select(row => string.Join(
                ',', Animals.FirstOrDefault(animal => animal[0] == row[1])?[1] ?? "554000000000009", row[0], Of(row[3], "positive=POS,negative=NEG,pending=to come"))))))),
        Text);

    private static string? Differs(string[][] rows, string sources, params (string Name, byte[] Text)[] files)
    {
        var (landed, said) = (Reading("records\n" + Promises), Reading("records\n" + Promises + sources));
        DiagnosticText.Of(said.Problems).ShouldBe("");
        var herd = HerdReader.Read(
            Bytes("animal,official identity,born,sex,breed,mature weight\n" + Lines(Animals.Select(animal => string.Join(',', animal)))),
            Bytes("date,animal,kind,value,unit,method,sire\n" + Lines(rows.Select(row => string.Join(',', row)))), landed.Rulebook.Vocabulary, landed.Rulebook.Records);
        var input = SourceReader.Read(file => Array.Find(files, one => one.Name == file).Text, file => file, said.Rulebook.Vocabulary, said.Rulebook.Records!);
        var other = HerdReading.Read(input, said.Rulebook.Vocabulary, said.Rulebook.Records, null, ReadingOptions.Default).Herd;
        other.Problems.ShouldAllBe(problem => problem.Severity == Severity.Error && files.Any(file => file.Name == problem.File));
        var (first, second) = (Said(herd), Said(other));
        if (first != second)
        {
            return $"the landed files:\n{first}\nthe sources:\n{second}\n{DiagnosticText.Of(other.Problems)}";
        }

        // Written out as they are read, and read again, they say the same.
        var written = HerdAsRead.Of(input).AsCsv();
        var again = Said(HerdReader.Read([.. written[0].Bytes.Span], [.. written[1].Bytes.Span], landed.Rulebook.Vocabulary, landed.Rulebook.Records));
        return second == again ? null : $"the sources:\n{second}\nwritten out and read again:\n{again}\n{Encoding.UTF8.GetString(written[1].Bytes.Span)}";
    }

    private static string Said(Herd herd)
    {
        var said = new StringBuilder();
        for (var animal = 0; animal < herd.Numbers.Length; animal++)
        {
            said.Append($"{herd.Numbers[animal]} {herd.Sexes[animal]} born {herd.BornEarliest[animal]} to {herd.BornLatest[animal]}");
            foreach (var fact in herd.Facts)
            {
                said.Append($" {fact.States[animal]} {(fact.Texts.Length > 0 ? fact.Texts[animal]?.Replace(" ", "").Replace("-", "") : "")} {(fact.Numbers.Length > 0 ? fact.Numbers[animal] : 0)}");
            }

            said.Append('\n');
            foreach (var kind in herd.Vocabulary.Kinds)
            {
                var run = herd.Runs[kind.Id];
                var entries = Enumerable.Range(run.Starts[animal], run.Starts[animal + 1] - run.Starts[animal]).Select(place =>
                    $"{Shown.Date(run.Days[place])} {(run.Low.Length > 0 ? $"{run.Low[place]}..{run.High[place]}" : "")}{(run.Answers.Length > 0 ? run.Answers[place] : "")} "
                    + string.Join(" ", herd.Details.Of(run.Lines[place]).ToArray().Select(cell => cell with { Line = 0 })));
                var covered = Enumerable.Range(Day.Number(Words.Date("2025-12-01")), 32).Select(day => herd.Coverage.Covers(animal, kind.Id, day, day, strict: true) ? '#' : '.');
                said.Append($"  {kind.Name} {new string([.. covered])} {string.Join(", ", entries.Order(StringComparer.Ordinal))}\n");
            }
        }

        return said.ToString();
    }

    private static RulebookReading Reading(string records) => FarmFiles.Rules(MadeUpFarm.Words + records);

    private static string Text(string[][] rows) => Lines(rows.Select(row => string.Join(',', row)));

    private static string Lines(IEnumerable<string> lines) => string.Concat(lines.Select(line => line + "\n"));

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }

    private static string DayFirst(string date) => date.Split('-') is [var year, var month, var day] ? $"{day}/{month}/{year}" : date;

    private static string MonthFirst(string date) => date.Split('-') is [var year, var month, var day] ? $"{month}/{day}/{year[2..]}" : date;

    private static string Spaced(string identity) => $"{identity[..3]} {identity[3..9]}-{identity[9..]}";

    private static string Twice(string number) => double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? (2 * value).ToString(CultureInfo.InvariantCulture) : number;

    /// <summary>A word in another's place: <c>heat=HT,mating=AI</c>.</summary>
    private static string Of(string word, string pairs) => pairs.Split(',').Select(pair => pair.Split('=')).FirstOrDefault(pair => pair[0] == word)?[1] ?? word;
}
