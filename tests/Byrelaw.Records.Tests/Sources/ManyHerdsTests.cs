using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>A herd read out of tables of many is the herd read from tables that somebody cut to it by hand.</summary>
public sealed class ManyHerdsTests
{
    private static readonly Gen<string[]> Row =
        from herd in Gen.OneOf("A", "A", "B", "C", "")
        from animal in Gen.OneOf("1", "2", "3", "4", "5", "9", "herd", "mob:River")
        from day in Gen.Int[1, 28]
        from kind in Gen.OneOf("heat", "mating", "purchase", "sale", "mob", "rain", "weight")
        select (string[])[herd, animal, day == 1 ? "2025-13-01" : $"2025-12-{day:00}", kind, kind == "mob" ? "River" : kind == "weight" ? "500" : ""];

    private static readonly string[] Animals = ["1,F,A", "2,F,B", "3,M,A", "4,F,", "5,F,C"];

    [Fact]
    public void Each_herd_is_the_herd_alone() => Row.Array[1, 12].Hold(
        rows =>
        {
            var many = Open("""
                  from "animals.csv", a row for each animal
                    animal in "No"
                    sex in "Sex"
                    herd in "Herd"
                  from "events.csv", a row for each event
                    herd in "Herd"
                    animal in "No"
                    date in "Day"
                    kind in "Kind"
                    value in "Value"
                    unit in "Unit"
                """, "No,Sex,Herd\n" + Lines(Animals), "Herd,No,Day,Kind,Value,Unit\n" + Lines(rows.Select(row => string.Join(',', row) + Unit(row))), out var words);
            many.Herds.ShouldBe(rows.Select(row => row[0]).Concat(["A", "B", "C"]).Where(herd => herd.Length > 0).Distinct().Order());
            foreach (var herd in many.Herds)
            {
                var hers = Animals.Select(row => row.Split(',')).Where(animal => In(rows, animal[0], animal[2], herd)).ToList();
                var alone = Open("""
                      from "animals.csv", a row for each animal
                        animal in "No"
                        sex in "Sex"
                      from "events.csv", a row for each event
                        animal in "No"
                        date in "Day"
                        kind in "Kind"
                        value in "Value"
                        unit in "Unit"
                    """, "No,Sex\n" + Lines(hers.Select(animal => $"{animal[0]},{animal[1]}")), "No,Day,Kind,Value,Unit\n" + Lines(rows.Where(row => Counts(rows, row, herd)).Select(row => string.Join(',', row[1..]) + Unit(row))), out var others);

                Said(Read(many.OfHerd(herd), words)).ShouldBe(Said(Read(alone.Whole(), others)), herd);
            }
        },
        count: 200,
        show: rows => Lines(rows.Select(row => string.Join(',', row))));

    [Fact]
    public void Herds_that_are_written_in_two_ways_are_one_and_rows_without_one_count_where_their_animal_was()
    {
        const string lines = """
              from "animals.csv", a row for each animal
                animal in "No"
                sex in "Sex"
                herd in "Herd"
              from "events.csv", a row for each event
                herd in "Herd"
                animal in "No"
                date in "Day"
                kind in "Kind"
            """;
        var many = Open(
            lines, "No,Sex,Herd\n1,F,Moor\n2,F,Hill\n3,F,MOOR \n4,F,\n",
            "Herd,No,Day,Kind\nＭｏｏｒ,1,2025-12-10,heat\n,2,2025-12-11,mating\nHill,herd,2025-12-12,heat\n moor,herd,2025-12-13,mating\n,3,2025-12-14,heat\n,9,2025-12-15,mating\n,4,2025-12-16,mating\nMoor,2,2025-12-17,heat\n", out var words);

        many.Herds.ShouldBe(["Hill", "Moor"]);
        many.WithoutHerd.ShouldBe(1);
        var moor = Read(many.OfHerd("Moor"), words);
        moor.Numbers.ShouldBe(["1", "2", "3"], "2 was seen there once");
        moor.Runs[moor.Vocabulary.FindKind("heat")!.Id].Days.Select(Shown.Date).ShouldBe(["2025-12-10", "2025-12-17", "2025-12-14"]);
        moor.Runs[moor.Vocabulary.FindKind("mating")!.Id].Days.Select(Shown.Date).ShouldBe(["2025-12-13", "2025-12-11", "2025-12-13", "2025-12-13"]);
        moor.Problems.Select(problem => $"{problem.Line} {problem.Code}").ShouldBe(["7 R0132"], "nobody knows whose it is, so it may be one of hers");
        Read(many.OfHerd("Hill"), words).Numbers.ShouldBe(["2"]);
    }

    private static string Unit(string[] row) => row[3] == "weight" ? ",kg" : ",";

    /// <summary>Whether an animal was ever in a herd: by her own row, or by one of what happened to her.</summary>
    private static bool In(string[][] rows, string animal, string own, string herd) => own == herd || rows.Any(row => row[1] == animal && row[0] == herd);

    private static bool Counts(string[][] rows, string[] row, string herd)
    {
        var own = Animals.Select(animal => animal.Split(',')).FirstOrDefault(animal => animal[0] == row[1])?[2];
        var isGroup = row[1] is "herd" or "mob:River";
        var hasHerd = !isGroup && (own is { Length: > 0 } || rows.Any(other => other[1] == row[1] && other[0].Length > 0));
        var counts = hasHerd ? In(rows, row[1], own ?? "", herd) : row[0].Length > 0 ? row[0] == herd : isGroup || own is null;
        return counts && !(row[3] is "purchase" or "sale" or "mob" && row[0].Length > 0 && row[0] != herd);
    }

    private static string Said(Herd herd)
    {
        var said = new StringBuilder();
        for (var animal = 0; animal < herd.Numbers.Length; animal++)
        {
            said.Append($"{herd.Numbers[animal]} {herd.Sexes[animal]}\n");
            for (var day = Day.Number(Words.Date("2025-12-01")); day <= Day.Number(Words.Date("2025-12-31")); day++)
            {
                var mob = herd.Mobs.At(animal, day);
                said.Append($"  {Shown.Date(day)} {herd.Membership.At(animal, day)} {(mob >= 0 ? herd.Mobs.Names[mob] : mob)}");
                foreach (var kind in herd.Vocabulary.Kinds)
                {
                    said.Append($" {(herd.Coverage.Covers(animal, kind.Id, day, day, strict: true) ? '#' : '.')}{herd.Runs[kind.Id].DaysOf(animal).ToArray().Count(one => one == day)}");
                }

                said.Append('\n');
            }
        }

        return said.Append($"{herd.AnimalsWithoutNumber} {herd.Problems.Count(problem => problem.Severity == Severity.Error)}").ToString();
    }

    private static Herd Read(RecordInput input, RulebookReading words) =>
        HerdReading.Read(input, words.Rulebook.Vocabulary, words.Rulebook.Records, null, ReadingOptions.Default).Herd;

    private static string Lines(IEnumerable<string> lines) => string.Concat(lines.Select(line => line + "\n"));

    private static SourceReader Open(string sources, string animals, string events, out RulebookReading words)
    {
        words = RulebookReader.Read("farm.byre", new OneFile(
            "event heat\nevent mating\nevent purchase  joins the herd\nevent sale  leaves the herd\nmeasure weight  in kg\n\nrecords\n  up to 2025-12-31\n  complete for heat, mob, weight since 2025-12-03\n" + sources))!;
        DiagnosticText.Of(words.Problems).ShouldBe("");
        return SourceReader.Open(
            file => Encoding.UTF8.GetBytes(file == "animals.csv" ? animals : events), file => file, words.Rulebook.Vocabulary, words.Rulebook.Records!);
    }
}
