using Byrelaw.Records.Suggesting;
using NodaTime;

namespace Byrelaw.Records.Tests.Suggesting;

/// <summary>
/// A made-up herd is written as a farm's program writes it. No line that counts says anything but what was meant; and with those that wait and were
/// meant, the herd comes back.
/// </summary>
public sealed class SuggestedHerdTests
{
    private const string Words = MadeUpFarm.Words + "event lameness\nhint AI may be mating\n\n";

    private static readonly Gen<string> Row =
        from day in Gen.Int[1, 30]
        from month in Gen.Int[1, 12]
        from isWrong in Gen.Int[0, 19]
        from who in Gen.OneOf("1", "2", "3", "4")
        from what in Gen.OneOf(
            "heat;;;", "AI;;natural;Bull A", "AI;;inseminated;", "AI;;;", "AI;;jumped;", "LMN;;;", "weight;500,5;;", "weight;<3;;", "weight;5O0;;", "body condition;4,5;;", "body condition;12;;",
            "BVD virus;positive;;", "BVD virus;perhaps;;", "rain;;;")
        select $"{(isWrong == 0 ? "" : $"{day:00}/{month:00}/2025")};{who};{what}";

    [Fact]
    public void Lines_that_count_are_meant_and_with_the_right_ones_that_wait_the_herd_comes_back() => Each.Hold(Row.Array[30, 60], 60, rows =>
    {
        (string Name, byte[] Bytes)[] files =
        [
            ("cows.csv", Encoding.UTF8.GetBytes("No;EID;DOB;Sex;Race;Mature weight\n1;554000000000001;19/01/2020;cow;FR;540,5\n2;554000000000002;28/02/2021;cow;;500\n3;554000000000003;20/08/2022;cow;JE;\n4;554000000000004;;bull;JE;?\n")),
            ("diary.csv", Encoding.UTF8.GetBytes("Date;No;Code;Result;Method;Sire\n" + string.Concat(rows.Select(row => row + "\n")))),
        ];
        var vocabulary = Reading("").Rulebook.Vocabulary;
        var suggested = RecordsSuggester.Suggest("records", files, vocabulary, new LocalDate(2026, 1, 1));
        var meant = Written.Split('\n').Select(line => line.Trim()).ToHashSet(StringComparer.Ordinal);
        var chosen = new StringBuilder("records \"records\"\n  up to 2025-12-31\n");
        foreach (var written in suggested.Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal)))
        {
            var (line, waits) = Unremarked(written.Trim());
            if (!waits && !meant.Contains(line))
            {
                return $"counts, and was not meant: {line}\n{suggested}";
            }

            chosen.Append(meant.Contains(line) ? $"    {line}\n" : "");
        }

        var said = Reading(chosen.ToString());
        DiagnosticText.Of(said.Problems).ShouldBe("", chosen.ToString());
        var (first, second) = (Herd(said, files), Herd(Reading("records \"records\"\n  up to 2025-12-31\n" + Written), files));
        return first == second ? null : $"{first}\nis not\n{second}\n{chosen}";
    }, row => string.Join('\n', row));

    /// <summary>What a person who knows the farm writes by hand.</summary>
    private const string Written = """
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
            mature weight in "Mature weight", in kg
          from "diary.csv", separated by semicolons, a row for each event
            dates day first
            decimal comma
            animal in "No"
            date in "Date"
            kind in "Code"
              - "AI" is mating
              - "LMN" is lameness
              - "weight" is weight, value in "Result", in kg
              - "body condition" is body condition, value in "Result"
              - "BVD virus" is BVD virus, value in "Result"
            method in "Method"
            sire in "Sire"

        """;

    private static (string Line, bool Waits) Unremarked(string line)
    {
        line = line.LastIndexOf("  # ", StringComparison.Ordinal) is > 0 and var at ? line[..at] : line;
        return line.StartsWith("# ? ", StringComparison.Ordinal) ? (line[4..], true) : (line, false);
    }

    private static string Herd(RulebookReading said, (string Name, byte[] Bytes)[] files)
    {
        var input = FarmFiles.Input(said, files);
        return Text(input.Animals) + Text(input.Events);
    }

    private static string Text(RecordFile file)
    {
        using var reader = new StreamReader(file.Open());
        return reader.ReadToEnd();
    }

    private static RulebookReading Reading(string records) => FarmFiles.Rules(Words + records);
}
