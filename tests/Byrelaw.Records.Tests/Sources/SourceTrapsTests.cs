using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>What cannot be told of a source is never taken for a name, a mob, an animal or a number.</summary>
public sealed class SourceTrapsTests
{
    private const string Cows = "No,Mob\n1,River\n2,Hill\n";

    [Fact]
    public void A_mob_of_which_two_sources_say_different_things_is_no_mob()
    {
        var herd = Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
                mob in "Mob"
              from "more.csv", a row for each animal
                animal in "No"
                mob in "Where"
            """, ("cows.csv", Cows), ("more.csv", "No,Where\n1,River\n2,Flats\n"));

        var day = Day.Number(Words.Date("2026-09-01"));
        herd.Mobs.Names[herd.Mobs.At(herd.Find("1"), day)].ShouldBe("River");
        herd.Mobs.At(herd.Find("2"), day).ShouldBeLessThan(0);
        herd.Mobs.Names.ShouldAllBe(name => !Unreadable.Is(name));
    }

    [Fact]
    public void A_tag_that_nobody_has_makes_no_animal()
    {
        var herd = Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
                official identity in "Mob"
              from "sexes.csv", a row for each animal
                animal in "Tag", by official identity
                sex in "Sex"
            """, ("cows.csv", Cows), ("sexes.csv", "Tag,Sex\nRiver,F\nNowhere,M\n"));

        herd.Numbers.ShouldBe(["1", "2"]);
        herd.Sexes.ShouldBe([Sex.Female, Sex.NotKnown]);
        herd.AnimalsWithoutNumber.ShouldBe(1);
        herd.Problems.ShouldHaveSingleItem().File.ShouldBe("sexes.csv");
    }

    [Fact]
    public void A_remark_over_several_lines_is_one_cell_and_rows_behind_it_keep_their_lines()
    {
        var herd = Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
              from "diary.csv", separated by semicolons, a row for each event
                animal in "Line No"
                date in "Date"
                kind in "Kind"
                note in "Note"
            """, ("cows.csv", Cows), ("diary.csv", "Date;\"Line\r\nNo\";Note;Kind\r\n2026-05-01;1;\"lame; near hind\r\n\r\nvet called\";heat\r\n2026-05-02;2;;heat\r\n"));

        herd.Problems.ShouldHaveSingleItem().Code.ShouldBe("R0305");
        Shown.Entries(herd, "1", herd.Vocabulary.FindKind("heat")!).ShouldBe("2026-05-01 (2)");
        herd.Places!.Of(ofAnimals: false, line: 3).ToString().ShouldContain("6");
    }

    [Fact]
    public void A_column_that_tells_of_services_is_never_offered_to_be_left_out_and_a_sample_without_a_result_is_pending()
    {
        var herd = Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
              from "scans.csv", a row for each event
                animal in "Cow"
                date in "Day"
                pregnancy test in "Found"
                  - "E" is empty
            """, ("cows.csv", "No,Served,Weather\n1,2026-08-25,dry\n2,,\n"), ("scans.csv", "Cow,Day,Found\n1,2026-09-20,\n2,2026-09-20,E\n2,,\n"));

        var notRead = herd.Problems.Single(problem => problem.Code == "R0305");
        notRead.Help.ShouldBe("say what stands there, or `leave out columns \"Weather\"`");
        herd.HeadingsNotRead.ShouldBe(["Served", "Weather"]);
        Shown.Entries(herd, "1", herd.Vocabulary.FindKind("pregnancy test")!).ShouldBe("2026-09-20 (2)");
        Shown.Entries(herd, "2", herd.Vocabulary.FindKind("pregnancy test")!).ShouldBe("2026-09-20 (3)");
    }

    [Theory]
    [InlineData("2026-05-01;1;\";heat\n2026-05-02;2;x;heat\n2026-05-03;1;\";heat\n")]
    [InlineData("2026-05-01;1;\"x;heat\n2026-05-02;2;;heat\n")]
    public void A_mark_that_is_never_closed_swallows_no_row(string rows)
    {
        var herd = Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
              from "diary.csv", separated by semicolons, a row for each event
                animal in "No"
                date in "Date"
                kind in "Kind"
                note in "Note"
            """, ("cows.csv", Cows), ("diary.csv", "Date;No;Note;Kind\n" + rows));

        herd.Problems.First(problem => problem.Code == "R0307").Line.ShouldBe(2);
        var heat = herd.Vocabulary.FindKind("heat")!;
        Shown.Entries(herd, "2", heat).ShouldStartWith("2026-05-02");
        herd.Coverage.Covers(herd.Find("2"), heat.Id, Day.Number(Words.Date("2026-05-02")), Day.Number(Words.Date("2026-05-02")), true).ShouldBeFalse();
    }

    [Fact]
    public void A_full_stop_in_a_word_is_no_decimal_point()
    {
        var herd = Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
              from "moves.csv", a row for each event
                decimal comma
                animal in "No"
                date in "Day"
                kind is mob
                value in "To"
            """, ("cows.csv", Cows), ("moves.csv", "No,Day,To\n1,2026-05-01,St. Mary\n"));

        herd.Mobs.Names.ShouldContain("St. Mary");
        herd.Problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();
    }

    [Fact]
    public void A_path_out_of_reach_is_refused()
    {
        var reading = Rules("""
              from "/somewhere/cows.csv", a row for each animal
                animal in "No"
            """);

        reading.Problems.ShouldHaveSingleItem().Code.ShouldBe("B0004");
        reading.Rulebook.Records!.Sources.ShouldHaveSingleItem().IsBroken.ShouldBeTrue();
    }

    private static Herd Herd(string sources, params (string Name, string Text)[] files)
    {
        var rules = Rules(sources);
        DiagnosticText.Of(rules.Problems).ShouldBe("");
        var input = SourceReader.Read(file => Encoding.UTF8.GetBytes(Array.Find(files, one => one.Name == file).Text), file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
        return HerdReading.Read(input, rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd;
    }

    private static RulebookReading Rules(string sources) =>
        RulebookReader.Read("farm.byre", new OneFile("event heat\nevent mating\ntest pregnancy test answers pregnant, empty\nfact official identity  is identity\n\nrecords\n  up to 2026-10-04\n" + sources))!;
}
