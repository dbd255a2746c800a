using Byrelaw.Language.Rulebooks.RecordSources;
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
    public void Numbers_are_found_whatever_zeros_stand_in_front_where_that_is_written_and_told_of_once_where_not()
    {
        (string, string)[] files = [("cows.csv", "No,Mob\n000056,River\n000057,Hill\n07,Hill\n007,Hill\n"), ("diary.csv", "Date,No,Kind\n2026-05-01,56,heat\n2026-05-02,057,heat\n2026-05-03,7,heat\n2026-05-04,58,heat\n")];
        Herd Read(string by) => Herd($"""
              from "cows.csv", a row for each animal
                animal in "No"
                mob in "Mob"
              from "diary.csv", a row for each event
                animal in "No"{by}
                date in "Date"
                kind in "Kind"
            """, files);

        var without = Read("");
        var heat = without.Vocabulary.FindKind("heat")!;
        without.Problems.Select(problem => problem.Code).ShouldBe(["R0140", "R0140", "R0132", "R0132"]);
        without.Problems[0].Help!.ShouldContain("`animal in \"No\", by number`");
        Shown.Entries(without, "000056", heat).ShouldBe("");

        var herd = Read(", by number");
        Shown.Entries(herd, "000056", heat).ShouldBe("2026-05-01 (2)");
        Shown.Entries(herd, "000057", heat).ShouldBe("2026-05-02 (3)");
        herd.Problems.Select(problem => problem.Code).ShouldBe(["R0139", "R0132"], "two animals differ by zeros only; nobody has the other");
        foreach (var number in new[] { "07", "007" })
        {
            var day = Day.Number(Words.Date("2026-05-03"));
            herd.Coverage.Covers(herd.Find(number), heat.Id, day, day, true).ShouldBeFalse();
        }
    }

    [Theory]
    [InlineData("thousands comma", "1,551", "1551")]
    [InlineData("thousands comma", "12,345,678.5", "12345678.5")]
    [InlineData("thousands comma", "<1,551", "<1551")]
    [InlineData("thousands comma", "1,55", null)]
    [InlineData("thousands comma", "1,5511", null)]
    [InlineData("thousands comma", ",551", null)]
    [InlineData("thousands comma", "1.551,5", null)]
    [InlineData("thousands comma", "551", "551")]
    [InlineData("thousands point", "1.551", "1551")]
    [InlineData("thousands point", "1.551,5", "1551.5")]
    [InlineData("thousands point", "4,5", "4.5")]
    [InlineData("thousands point", "4.5", null)]
    [InlineData("decimal comma", "1,551", "1.551")]
    public void A_number_is_read_as_it_is_said_to_be_written(string line, string cell, string? wanted) =>
        new CellNumbers(line != "thousands comma", line switch { "thousands comma" => ',', "thousands point" => '.', _ => null }).Landed(cell, 1).ShouldBe(wanted);

    [Theory]
    [InlineData("12-Aug-2024", DateOrder.DayFirst, "2024-08-12")]
    [InlineData("12 August 2024 5:25 AM", DateOrder.DayFirst, "2024-08-12")]
    [InlineData("12-Aug-24", DateOrder.DayFirst, "2024-08-12")]
    [InlineData("Aug 12, 2024", DateOrder.MonthFirst, "2024-08-12")]
    [InlineData("Aug 12, 2024", DateOrder.DayFirst, null)]
    [InlineData("12-Aug-2024", DateOrder.YearFirst, null)]
    [InlineData("31-Sep-2024", DateOrder.DayFirst, null)]
    [InlineData("12-Augu-2024", DateOrder.DayFirst, null)]
    [InlineData("Apr 2022", DateOrder.DayFirst, "2022-04")]
    [InlineData("Sept-2022", DateOrder.MonthFirst, "2022-09")]
    [InlineData("Apr-22", DateOrder.DayFirst, null)]
    [InlineData("12 Aug", DateOrder.DayFirst, null)]
    public void A_month_may_stand_there_by_its_name_where_the_order_has_it(string cell, DateOrder order, string? wanted) =>
        new CellDates(order, hasShortYears: true, Words.Date("2026-10-01")).LandedSpan(cell).ShouldBe(wanted);

    [Theory]
    [InlineData("20/05/2026", "it fits `dates day first`: write that below its `from`, where all its dates are so")]
    [InlineData("01/05/2026", "it fits `dates day first` and `dates month first`: write that below its `from`, where all its dates are so")]
    [InlineData("20.5.26", "it fits `dates day first`, with `short years`: write that below its `from`, where all its dates are so")]
    [InlineData("soon", null)]
    public void A_day_written_otherwise_is_told_the_line_that_reads_it(string cell, string? wanted) => Herd("""
              from "cows.csv", a row for each animal
                animal in "No"
                mob in "Mob"
              from "diary.csv", a row for each event
                animal in "No"
                date in "Date"
                kind in "Kind"
            """, ("cows.csv", Cows), ("diary.csv", $"Date,No,Kind\n{cell},1,heat\n")).Problems.ShouldHaveSingleItem().Help.ShouldBe(wanted);

    [Fact]
    public void A_heading_over_two_rows_is_offered_by_the_words_that_it_has()
    {
        var herd = Herd("""
              from "cows.csv", headings in rows 1 to 2, a row for each animal
                animal in "Tag"
            """, ("cows.csv", "Identity,Birth\nTag,Born\n1,2020-01-01\n"));
        herd.Problems.First(problem => problem.Code == "R0304").Help.ShouldBe("perhaps `Identity Tag` is meant");
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
