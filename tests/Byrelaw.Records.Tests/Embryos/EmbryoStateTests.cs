using Byrelaw.Records.Embryos;
using Byrelaw.Records.Sources;
using NodaTime;

namespace Byrelaw.Records.Tests.Embryos;

/// <summary>What became of an embryo is told by events, and whatever can be read in two ways leaves it in doubt.</summary>
public sealed class EmbryoStateTests
{
    private const string Three = """
        embryo,donor,sire,made by,collected,frozen on,age frozen
        E-01,1001,2001,collected eggs,2026-10-12,,
        E-02,1001,2001,collected eggs,2026-10-12,2026-10-19,
        E-03,1001,2001,flush,2026-10-26,,
        """;

    [Fact]
    public void Without_events_it_is_fresh_or_in_the_tank() => States().ShouldBe("E-01 Fresh, E-02 InTheTank, E-03 Fresh");

    [Fact]
    public void A_transfer_uses_it_and_others_stay() => States("2026-10-20,1002,transfer,E-01").ShouldBe("E-01 Used, E-02 InTheTank, E-03 Fresh");

    [Fact]
    public void What_happens_to_it_is_written_of_the_embryo() =>
        States("2026-10-19,embryo:E-01,embryo frozen,", "2026-10-27,embryo: E-03,embryo discarded,").ShouldBe("E-01 InTheTank, E-02 InTheTank, E-03 Discarded");

    [Fact]
    public void Two_transfers_leave_it_in_doubt() =>
        States("2026-10-20,1002,transfer,E-01", "2026-10-20,1003,transfer,E-01").ShouldBe("E-01 InDoubt UsedTwice, E-02 InTheTank, E-03 Fresh");

    [Fact]
    public void Two_transfers_into_one_cow_on_one_day_are_two_embryos() =>
        States("2026-10-20,1002,transfer,E-01", "2026-10-20,1002,transfer,E-02").ShouldBe("E-01 Used, E-02 Used, E-03 Fresh");

    [Fact]
    public void Used_and_discarded_is_a_contradiction() =>
        States("2026-10-20,1002,transfer,E-01", "2026-10-20,embryo:E-01,embryo discarded,").ShouldBe("E-01 InDoubt UsedTwice, E-02 InTheTank, E-03 Fresh");

    [Fact]
    public void A_label_that_nobody_listed_may_be_each_that_was_to_be_had_that_day() =>
        States("2026-10-20,1002,transfer,E-11").ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed, E-03 Fresh");

    [Fact]
    public void A_transfer_of_which_nobody_knows_the_cow_may_be_of_any() =>
        States("2026-10-20,1009,transfer,E-01").ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed, E-03 Fresh");

    [Fact]
    public void A_transfer_without_a_day_may_be_of_any() =>
        States("2026-10-32,1002,transfer,E-01").ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed, E-03 InDoubt MayBeUsed");

    [Fact]
    public void An_old_transfer_that_names_no_embryo_is_counted_and_no_more()
    {
        States("2026-10-20,1002,transfer,").ShouldBe("E-01 Fresh, E-02 InTheTank, E-03 Fresh");
        Book(Three, "2026-10-20,1002,transfer,").TransfersWithoutEmbryo.ShouldBe(1);
    }

    [Fact]
    public void A_row_that_cannot_be_read_leaves_its_own_embryo_in_doubt() =>
        States(Three.Replace("E-03,1001,2001,flush", "E-03,1001,2001,flushed out"), []).ShouldBe("E-01 Fresh, E-02 InTheTank, E-03 InDoubt RowUnreadable");

    [Fact]
    public void Rows_of_one_label_are_both_in_doubt() =>
        States(Three + "\nE-01,1001,2001,flush,2026-10-13,,", []).ShouldBe("E-01 InDoubt RowUnreadable, E-02 InTheTank, E-03 Fresh");

    [Fact]
    public void A_row_of_an_embryo_without_a_day_names_nobody_else() =>
        States("2026-10-32,embryo:E-01,embryo discarded,").ShouldBe("E-01 InDoubt NoDay, E-02 InTheTank, E-03 Fresh");

    [Theory]
    [InlineData("2026-10-20,1002,embryo discarded,")]
    [InlineData("2026-10-20,embryo:E-11,embryo discarded,")]
    public void What_was_discarded_without_a_label_or_with_one_that_nobody_listed_may_be_each(string row) =>
        States(row).ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed, E-03 Fresh");

    [Fact]
    public void Which_one_was_frozen_ends_none() => States("2026-10-20,embryo:E-11,embryo frozen,").ShouldBe("E-01 Fresh, E-02 InTheTank, E-03 Fresh");

    [Theory]
    [InlineData("2026-10-20,mob:River,transfer,E-01")]
    [InlineData("2026-10-20,herd,transfer,E-01")]
    public void A_transfer_of_a_mob_or_the_herd_uses_the_embryo_that_it_names(string row) => States(row).ShouldBe("E-01 Used, E-02 InTheTank, E-03 Fresh");

    [Theory]
    [InlineData("Embryo no")]
    [InlineData("embrio")]
    [InlineData("Straw")]
    public void Under_a_heading_that_nobody_reads_any_label_may_stand(string heading) =>
        States(Under(Three, $"date,animal,kind,{heading}", "2026-11-30,1001,heat,", "2026-10-20,1002,transfer,E-01")).ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed, E-03 Fresh");

    [Fact]
    public void Under_one_that_speaks_of_something_else_none_does() =>
        States(Under(Three, "date,animal,kind,Remark", "2026-11-30,1001,heat,", "2026-10-20,1002,transfer,E-01")).ShouldBe("E-01 Fresh, E-02 InTheTank, E-03 Fresh");

    [Fact]
    public void A_column_that_stands_twice_is_no_blank() =>
        States("embryo,straw,straw,collected\nE-01,S-1,S-2,2026-10-12\nE-02,,,2026-10-12", Array.Empty<string>()).ShouldBe("E-01 InDoubt RowUnreadable, E-02 InDoubt RowUnreadable");

    [Fact]
    public void Events_that_cannot_be_read_may_have_used_any() =>
        States(Under("embryo,straw\nE-01,S-1\nE-02,S-2", "date;animal;kind", "2026-10-20;1002;transfer")).ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed");

    [Fact]
    public void Nothing_of_an_embryo_puts_an_animal_in_doubt()
    {
        var herd = Read(Three, "2026-10-20,1002,embryo discarded,", "2026-10-32,embryo:E-01,embryo frozen,");
        herd.Coverage.Gaps.ShouldBeEmpty();
        herd.Problems.Select(problem => problem.Code).Order(StringComparer.Ordinal).ShouldBe(["R0121", "R0514"]);
    }

    [Fact]
    public void A_transfer_written_of_an_embryo_may_be_of_any_animal()
    {
        var herd = Read(Three, "2026-10-20,embryo:E-01,transfer,");
        var gap = herd.Coverage.Gaps.ShouldHaveSingleItem();
        (gap.Animal, herd.Vocabulary.Kinds[gap.Kind].Name, gap.From).ShouldBe((-1, "transfer", Day.Number(new LocalDate(2026, 10, 20))));
        States("2026-10-20,embryo:E-01,transfer,").ShouldBe("E-01 InDoubt MayBeUsed, E-02 InDoubt MayBeUsed, E-03 Fresh");
    }

    // The days are those of docs/dates.md: eggs collected on one day are fertilised on the next; a flushed embryo is seven days old on the day of flushing (common practice, no source).
    [Theory]
    [InlineData("E-01", 7)]
    [InlineData("E-02", 7)]
    [InlineData("E-03", 1)]
    public void It_is_as_old_as_the_days_since_it_was_made(string label, int age)
    {
        var book = Book(Three);
        book.AgeOn(book.Find(label)!, new LocalDate(2026, 10, 20)).ShouldBe(age);
    }

    [Fact]
    public void One_that_an_event_freezes_is_as_old_as_on_that_day()
    {
        var book = Book(Three, "2026-10-19,embryo:E-01,embryo frozen,");
        book.AgeOn(book.Find("E-01")!, new LocalDate(2027, 3, 1)).ShouldBe(6);
    }

    [Fact]
    public void The_program_says_them_in_the_order_of_the_file_and_changes_with_them()
    {
        var one = Read(Three);
        var other = Read(Three.Replace("E-03,", "E-04,"));
        one.Embryos.Embryos.Select(embryo => embryo.Label).ShouldBe(["E-01", "E-02", "E-03"]);
        one.Fingerprint.ShouldNotBe(other.Fingerprint);
    }

    private static string States(params string[] events) => States(Three, events);

    private static string States(string embryos, string[] events) => States(Read(embryos, events));

    private static string States(Herd herd)
    {
        var book = herd.Embryos;
        return string.Join(", ", book.Embryos.Select(embryo => (embryo.Label, book.StandingOf(embryo)) is var (label, standing) ? $"{label} {standing.State} {standing.Why}".TrimEnd() : ""));
    }

    private static EmbryoBook Book(string embryos, params string[] events) => Read(embryos, events).Embryos;

    private static Herd Read(string embryos, params string[] events) => Under(embryos, "date,animal,kind,embryo", ["2026-11-30,1001,heat,", .. events]);

    private static Herd Under(string embryos, string heading, params string[] events) => HerdReading.Read(
        new RecordInput(
            RecordFile.Of("animals.csv", Support.Read.Bytes(Support.Read.Whole(Support.Read.Animals))),
            RecordFile.Of("events.csv", Support.Read.Bytes(heading + "\n" + string.Concat(events.Select(row => row + "\n")))))
        {
            Embryos = RecordFile.Of("embryos.csv", Support.Read.Bytes(Support.Read.Whole(embryos))),
        },
        Documents.BaseWords.Vocabulary, null, null, ReadingOptions.Default).Herd;
}
