namespace Byrelaw.Records.Tests.Sources;

/// <summary>A column that has another heading now takes with it what its line gives, of everyone, and nothing else.</summary>
public sealed class MissingColumnTests
{
    private const string Farm = """
        event calving
        event mating  with method is one of natural, inseminated, with sire is text
        event sale  leaves the herd
        measure serum copper  in umol/L
        measure body condition  on scale 1 to 10
        test pregnancy test  answers pregnant, empty
        fact official identity  is identity
        fact breed  is one of Friesian, Jersey
        fact line  is text
        fact mature weight  in kg

        records
          up to 2026-09-30
          complete for mating, sale, serum copper, body condition since 2026-01-01
          from "cows.csv", a row for each animal, as at 2026-09-30
            animal in "No"
            official identity in "Tag"
            born in "Born"
            sex in "Sex"
            mob in "Mob"
            parity in "Lact"
            breed in "Breed"
            line in "Line"
            mature weight in "Grown", in kg
            last calving in "Calved"
            last pregnancy test in "PD", dated in "Scanned"
              - "E" is empty
          from "diary.csv", a row for each event
            date in "Day"
            animal in "No"
            value in "Result"
            unit in "Unit"
            method in "How"
            sire in "Bull"
            note in "Note"
            recorded in "Entered"
            kind in "Code"
              - "AI" where "Remark" is "straw" is mating, method is inseminated
              - "AI" is mating
              - "CS" is body condition, value in "Score"
            leave out rows where "State" is "cancelled"
          from "lab.csv", a row for each event
            animal in "Tag", by official identity
            date in "Sampled"
            serum copper in "Cu", in umol/L
        """;

    private static readonly (string Name, string Text)[] Files =
    [
        ("cows.csv", "No,Tag,Born,Sex,Mob,Lact,Breed,Line,Grown,Calved,PD,Scanned\n1,T1,2020-01-02,F,River,3,Friesian,A,540,2026-03-01,E,2026-06-01\n2,T2,2021-01-02,F,River,2,,,,,,\n3,T3,2019-05-06,M,Hill,,Jersey,B,900,,,\n"),
        ("diary.csv", "Day,No,Code,Result,Unit,How,Bull,Note,Entered,Remark,Score,State\n2026-05-01,1,AI,,,natural,Aldo,,,,,\n2026-05-02,2,AI,,,,,,2026-05-03,straw,,\n2026-05-03,2,CS,,,,,,,,4.5,\n2026-05-04,1,serum copper,11,umol/L,,,,,,,\n2026-05-05,3,sale,,,,,,,,,\n2026-05-06,1,AI,,,,,,,,,cancelled\n"),
        ("lab.csv", "Tag,Sampled,Cu\nT1,2026-04-01,9\nT2,2026-04-01,12\n"),
    ];

    [Theory]
    [InlineData("cows.csv", "Tag", "serum copper")]
    [InlineData("cows.csv", "Sex", "")]
    [InlineData("cows.csv", "Mob", "")]
    [InlineData("cows.csv", "Lact", "")]
    [InlineData("cows.csv", "Breed", "")]
    [InlineData("cows.csv", "Line", "")]
    [InlineData("cows.csv", "Grown", "")]
    [InlineData("cows.csv", "Calved", "calving")]
    [InlineData("cows.csv", "PD", "pregnancy test")]
    [InlineData("cows.csv", "Scanned", "pregnancy test")]
    [InlineData("diary.csv", "Result", "serum copper")]
    [InlineData("diary.csv", "Unit", "serum copper")]
    [InlineData("diary.csv", "How", "")]
    [InlineData("diary.csv", "Bull", "")]
    [InlineData("diary.csv", "Note", "")]
    [InlineData("diary.csv", "Entered", "")]
    [InlineData("diary.csv", "Score", "body condition")]
    [InlineData("lab.csv", "Cu", "serum copper")]
    public void What_its_line_gives_is_not_known_and_all_else_is(string file, string heading, string kind)
    {
        var (whole, less) = (Read(), Read(file, heading));

        less.Problems.Where(problem => problem.Severity == Severity.Error && problem.Code is not ("R0132" or "R0139")).Select(problem => $"{problem.File} {problem.Code}").Distinct().ShouldBe([$"{file} R0304"]);
        NothingIsSaid(whole, less);
        foreach (var one in whole.Vocabulary.Kinds.Where(one => one.Name != kind))
        {
            Covered(less, one).ShouldBe(Covered(whole, one), one.Name);
            less.Runs[one.Id].Days.ShouldBe(whole.Runs[one.Id].Days, one.Name);
        }

        if (kind.Length > 0)
        {
            Covered(less, whole.Vocabulary.FindKind(kind)!).ShouldBeLessThan(Covered(whole, whole.Vocabulary.FindKind(kind)!));
        }
    }

    [Theory]
    [InlineData("cows.csv", "No")]
    [InlineData("diary.csv", "Day")]
    [InlineData("diary.csv", "No")]
    [InlineData("diary.csv", "Code")]
    [InlineData("diary.csv", "State")]
    [InlineData("lab.csv", "Tag")]
    [InlineData("lab.csv", "Sampled")]
    public void Without_whom_when_or_what_no_row_can_be_read(string file, string heading)
    {
        var (whole, less) = (Read(), Read(file, heading));

        less.Problems.Where(problem => problem.Code == "R0304").ShouldHaveSingleItem().File.ShouldBe(file);
        foreach (var kind in file == "cows.csv" ? ["calving", "pregnancy test"] : file == "lab.csv" ? ["serum copper"] : new[] { "mating", "body condition", "sale" })
        {
            Covered(less, whole.Vocabulary.FindKind(kind)!).ShouldBe(0, kind);
        }

        NothingIsSaid(whole, less);
    }

    [Fact]
    public void What_decides_between_two_meanings_decides_nothing_where_it_is_not_there()
    {
        var less = Read("diary.csv", "Remark");

        NothingIsSaid(Read(), less);
        less.Runs[less.Vocabulary.FindKind("mating")!.Id].Days.ShouldBeEmpty();
        less.Coverage.Covers(less.Find("1"), less.Vocabulary.FindKind("sale")!.Id, At("2026-05-01"), At("2026-05-01"), strict: true).ShouldBeFalse("a kind that cannot be told may be any");
        less.Coverage.Covers(less.Find("1"), less.Vocabulary.FindKind("sale")!.Id, At("2026-04-20"), At("2026-04-20"), strict: true).ShouldBeTrue("before that day nothing hangs on it");
    }

    [Fact]
    public void A_fact_that_a_missing_file_would_give_is_known_of_no_animal_of_another()
    {
        const string more = "\n  from \"more.csv\", a row for each animal\n    animal in \"No\"\n    sex in \"Sex\"\n    line in \"Line\"\n";
        var whole = FarmFiles.Herd(Farm + more, [.. Files, ("more.csv", "No,Sex,Line\n4,F,C\n")]);
        var less = FarmFiles.Herd(Farm + more, [.. FarmFiles.Bytes(Files), ("more.csv", null!)]);

        whole.Sexes.ShouldBe([Sex.Female, Sex.Female, Sex.Male, Sex.Female]);
        less.Sexes.ShouldBe([Sex.NotKnown, Sex.NotKnown, Sex.NotKnown]);
        less.Facts[less.Vocabulary.FindFact("line")!.Id].States.ShouldAllBe(state => state == FactState.Unreadable);
        less.Facts[less.Vocabulary.FindFact("breed")!.Id].States[0].ShouldBe(FactState.Known);
    }

    [Fact]
    public void A_tag_of_two_animals_doubts_these_two()
    {
        var herd = FarmFiles.Herd(Farm, [(Files[0].Name, Files[0].Text.Replace("T2", "T1", StringComparison.Ordinal)), Files[1], ("lab.csv", "Tag,Sampled,Cu\nT-1,2026-04-01,9\nT3,2026-04-01,12\n")]);
        var copper = herd.Vocabulary.FindKind("serum copper")!.Id;

        herd.Problems.Where(problem => problem.File == "lab.csv").ShouldHaveSingleItem().Message.ShouldBe("`T-1` is what 2 animals go by: `1` and `2`; expected what one animal goes by: nobody can tell whose this row is");
        herd.Coverage.Covers(herd.Find("1"), copper, At("2026-04-01"), At("2026-04-01"), strict: true).ShouldBeFalse();
        herd.Coverage.Covers(herd.Find("2"), copper, At("2026-04-01"), At("2026-04-01"), strict: true).ShouldBeFalse();
        herd.Coverage.Covers(herd.Find("3"), copper, At("2026-04-01"), At("2026-04-01"), strict: true).ShouldBeTrue();
        herd.Coverage.Covers(herd.Find("1"), copper, At("2026-04-02"), At("2026-04-02"), strict: true).ShouldBeTrue();
    }

    [Fact]
    public void A_row_of_facts_by_the_tag_of_two_animals_leaves_them_unknown_of_both()
    {
        const string more = "\n  from \"more.csv\", a row for each animal\n    animal in \"Tag\", by official identity\n    breed in \"Race\"\n";
        var herd = FarmFiles.Herd(Farm + more, [(Files[0].Name, Files[0].Text.Replace("T2", "T1", StringComparison.Ordinal)), Files[1], Files[2], ("more.csv", "Tag,Race\nT1,Jersey\nT3,\n")]);

        herd.Facts[herd.Vocabulary.FindFact("breed")!.Id].States.ShouldBe([FactState.Unreadable, FactState.Unreadable, FactState.Known]);
        herd.AnimalsWithoutNumber.ShouldBe(0, "it is one of the two");
        herd.Problems.Where(problem => problem.File == "more.csv").ShouldHaveSingleItem().Code.ShouldBe("R0139");
    }

    [Fact]
    public void Rows_that_the_farm_leaves_out_are_counted_among_the_doubts() =>
        Read().Doubted.OfType<RowsLeftOut>().ShouldBe([new RowsLeftOut("diary.csv", "State", "cancelled", 1)]);

    /// <summary>Whatever is known without the column was known with it, and the same.</summary>
    private static void NothingIsSaid(Herd whole, Herd less)
    {
        foreach (var number in less.Numbers)
        {
            var (before, after) = (whole.Find(number), less.Find(number));
            foreach (var fact in whole.Vocabulary.Facts)
            {
                var (was, now) = (whole.Facts[fact.Id], less.Facts[fact.Id]);
                if (now.States[after] != FactState.Unreadable)
                {
                    now.States[after].ShouldBe(was.States[before], fact.Name);
                }
            }

            new[] { whole.Sexes[before], Sex.NotKnown }.ShouldContain(less.Sexes[after]);
            foreach (var kind in whole.Vocabulary.Kinds)
            {
                for (var day = At("2026-01-01"); day <= At("2026-09-30"); day++)
                {
                    if (less.Coverage.Covers(after, kind.Id, day, day, strict: true))
                    {
                        whole.Coverage.Covers(before, kind.Id, day, day, strict: true).ShouldBeTrue();
                        less.Runs[kind.Id].DaysOf(after).Contains(day).ShouldBe(whole.Runs[kind.Id].DaysOf(before).Contains(day), $"{number} {kind.Name} {Shown.Date(day)}");
                    }
                }
            }
        }
    }

    private static int Covered(Herd herd, Kind kind) => herd.Numbers.Sum(number => Enumerable.Range(At("2026-01-01"), 273).Count(day => herd.Coverage.Covers(herd.Find(number), kind.Id, day, day, strict: true)));

    private static int At(string day) => Day.Number(Words.Date(day));

    private static Herd Read(string file = "", string heading = "") => FarmFiles.Herd(Farm, [.. Files.Select(one =>
    {
        var end = one.Text.IndexOf('\n', StringComparison.Ordinal);
        return one.Name != file ? one : (one.Name, string.Join(',', one.Text[..end].Split(',').Select(cell => cell == heading ? "Renamed" : cell)) + one.Text[end..]);
    })]);
}
