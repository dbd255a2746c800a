namespace Byrelaw.Records.Tests.Results;

public class DetailTests
{
    private static readonly Vocabulary Base = Documents.BaseWords.Vocabulary;

    [Fact]
    public void Details_are_read_from_columns_of_their_names()
    {
        var herd = Of(
            "date,animal,kind,value,method,Sire",
            "2026-08-01,1001,mating,,inseminated,Bull X", "2026-09-01,1001,service,,NATURAL,", "2026-10-01,1001,scan,empty,hand,");

        Cells(herd, "1001", "mating").ShouldBe("sire Bull X, method inseminated; method natural");
        Cells(herd, "1001", "pregnancy test").ShouldBe("method hand");
        herd.Problems.ShouldBeEmpty();
    }

    [Fact]
    public void A_detail_that_cannot_be_read_is_lost_and_never_the_entry()
    {
        var herd = Of("date,animal,kind,value,method", "2026-08-01,1001,mating,,naturl", "2026-10-01,1001,scan,empty,palpated");

        Cells(herd, "1001", "mating").ShouldBe("method unreadable");
        Cells(herd, "1001", "pregnancy test").ShouldBe("method unreadable");
        herd.Problems.Select(problem => problem.Code).ShouldBe(["R0173", "R0173"]);
        herd.Problems[0].Help.ShouldBe("perhaps `natural` is meant; until then the mating counts, and this of it is not known");
        herd.Coverage.Gaps.ShouldAllBe(gap => herd.Vocabulary.ById[gap.Kind].Filter != null);
    }

    [Fact]
    public void A_column_that_stands_twice_is_not_read_and_a_detail_of_a_kind_that_has_none_is_told()
    {
        var twice = Of("date,animal,kind,method,method", "2026-08-01,1001,mating,natural,natural");
        var stray = Of("date,animal,kind,method", "2026-08-01,1001,calving,hand");

        Cells(twice, "1001", "mating").ShouldBe("method unreadable");
        stray.Problems.Select(problem => (problem.Code, problem.Severity)).ShouldBe([("R0165", Severity.Warning)]);
        Cells(stray, "1001", "calving").ShouldBe("nothing");
    }

    [Fact]
    public void A_detail_that_may_be_cut_is_not_read()
    {
        var text = "date,animal,kind,step\n2026-08-01,1001,hormone given,2\n2026-08-08,1001,hormone given,1";
        var herd = HerdReader.Read(Read.Bytes(Read.Animals + "\n"), Read.Bytes(text), Base, null);

        Cells(herd, "1001", "hormone given").ShouldBe("step 2; step unreadable", "`1` may be the start of `10`");
        herd.Problems.Select(problem => problem.Code).ShouldBe(["R0110"]);
    }

    [Theory]
    [InlineData(null, "hand: 1, not hand: 0")]
    [InlineData("ultrasound", "hand: 0, not hand: 1")]
    public void What_a_blank_cell_means_is_the_farms_to_say_and_an_unreadable_one_is_neither(string? blank, string found)
    {
        var words = RulebookReader.Read("rulesets/recipients.byre", new Documents.BaseWords())!.Rulebook.Vocabulary;
        var test = words.FindKind("pregnancy test")!;
        var (hand, other) = (words.Filtered.First(kind => kind.Name == "pregnancy test with method hand"), words.Filtered.First(kind => kind.Name == "pregnancy test with method not hand"));
        var nowhere = test.Declared;
        var keeping = new RecordKeeping("", null, [], [], nowhere) { Blanks = blank is null ? [] : [new BlankOf(test, 0, blank, nowhere)] };

        var herd = HerdReader.Read(
            Read.Bytes(Read.Animals + "\n"), Read.Bytes("date,animal,kind,value,method\n2026-09-01,1001,scan,empty,\n2026-10-01,1001,scan,empty,ul?\n"), words, keeping);

        $"hand: {herd.Runs[hand.Id].Days.Length}, not hand: {herd.Runs[other.Id].Days.Length}".ShouldBe(found);
    }

    [Fact]
    public void A_number_is_read_as_one()
    {
        var herd = Of("date,animal,kind,step,device", "2026-08-01,1001,hormone given,0,in", "2026-08-08,1001,hormone given,a,out");

        Cells(herd, "1001", "hormone given").ShouldBe("step 0, device in; step unreadable, device out");
        herd.Problems.Select(problem => problem.Code).ShouldBe(["R0174"]);
    }

    private static string Cells(Herd herd, string animal, string name)
    {
        var kind = Base.FindKind(name)!;
        var kept = herd.Vocabulary.FindKind(name)!;
        var run = herd.Runs[kept.Id];
        var place = herd.Find(animal);
        var entries = new List<string>();
        for (var i = run.Starts[place]; i < run.Starts[place + 1]; i++)
        {
            var cells = new List<string>();
            foreach (var cell in herd.Details.Of(run.Lines[i]))
            {
                var detail = kind.Details[cell.Detail];
                cells.Add($"{detail.Name} {(cell.State == FactState.Unreadable ? "unreadable" : cell.Text ?? cell.Number.ToString(System.Globalization.CultureInfo.InvariantCulture))}");
            }

            entries.Add(cells.Count == 0 ? "nothing" : string.Join(", ", cells));
        }

        return string.Join("; ", entries);
    }

    private static Herd Of(params string[] lines) =>
        HerdReader.Read(Read.Bytes(Read.Animals + "\n"), Read.Bytes(string.Join('\n', lines) + "\n"), Base, null);
}
