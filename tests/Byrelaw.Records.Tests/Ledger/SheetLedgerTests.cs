using Byrelaw.Records.Ledger;
using NodaTime;

namespace Byrelaw.Records.Tests.Ledger;

/// <summary>The ledger of sheets: what is open, what closes it, and what becomes of promises where it cannot be trusted.</summary>
public sealed class SheetLedgerTests : IRuleFiles
{
    private const string Rules = """
        event calving
        event mating
        event hormone given  marks treatment, with device is one of "in", out, gone
        test pregnancy test  answers pregnant, empty
        records "records"
          up to 2026-10-10
          complete for calving, mating, hormone given, pregnancy test since 2020-01-01
        """;

    private static readonly Sheet First = new("H1004-5b20e1", new(2026, 10, 4), new(2026, 10, 4), 1, "H", [], [
        new SheetRow(1, "7", null, [new SheetEntry("hormone given", "in")]),
        new SheetRow(2, "8", null, [new SheetEntry("hormone given", "in")]),
    ]);

    private static readonly Sheet Scans = new("S1005-aa01bc", new(2026, 10, 5), new(2026, 10, 5), null, "S", [], [new SheetRow(1, "7", null, [new SheetEntry("pregnancy test")])]);

    private readonly Rulebook _rulebook;

    public SheetLedgerTests() => _rulebook = RulebookReader.Read("farm.byre", this)!.Rulebook;

    [Fact]
    public void A_row_is_open_until_an_entry_of_her_kind_and_day_is_on_record_with_the_device_that_it_was_for()
    {
        Open("").ShouldBe("H1004-5b20e1:1 H1004-5b20e1:2 S1005-aa01bc:1");
        Open("2026-10-04,7,hormone given,,in,").ShouldBe("H1004-5b20e1:2 S1005-aa01bc:1");
        Open("2026-10-04,7,hormone given,,,").ShouldBe("H1004-5b20e1:1 H1004-5b20e1:2 S1005-aa01bc:1", "nothing is said of a device");
        Open("2026-10-03,7,hormone given,,in,").ShouldBe("H1004-5b20e1:1 H1004-5b20e1:2 S1005-aa01bc:1", "another day");
        Open("2026-10-06,7,hormone given,,in,H1004-5b20e1:1").ShouldBe("H1004-5b20e1:2 S1005-aa01bc:1", "its row is named, though it was done two days later");
        Open("2026-10-06,8,hormone given,,in,H1004-5b20e1:1").ShouldBe("H1004-5b20e1:1 H1004-5b20e1:2 S1005-aa01bc:1", "a row of somebody else closes nothing of hers");
    }

    [Fact]
    public void What_was_not_done_is_closed_by_a_row_that_says_so_and_one_without_its_sheet_closes_nothing()
    {
        var herd = Read("2026-10-04,7,not done,hormone given,,H1004-5b20e1:1\n2026-10-05,7,not done,pregnancy test,,S1005-aa01bc:1");
        herd.Problems.ShouldBeEmpty();
        Said(herd).ShouldBe("H1004-5b20e1:2");
        var without = Read("2026-10-04,7,not done,hormone given,,");
        without.Problems.ShouldNotBeEmpty();
        Said(without).ShouldBe("H1004-5b20e1:1 H1004-5b20e1:2 S1005-aa01bc:1");
    }

    [Fact]
    public void What_is_open_is_in_doubt_from_the_sheets_day_to_today_and_on_no_other_day()
    {
        var herd = Read("", today: new(2026, 10, 8));
        var (cow, kind) = (herd.Find("7"), _rulebook.Vocabulary.FindKind("hormone given")!.Id);
        bool Covers(LocalDate day) => herd.Coverage.Covers(cow, kind, Day.Number(day), Day.Number(day), strict: false);
        Covers(new(2026, 10, 3)).ShouldBeTrue();
        Covers(new(2026, 10, 4)).ShouldBeFalse();
        Covers(new(2026, 10, 8)).ShouldBeFalse();
        Covers(new(2026, 10, 9)).ShouldBeTrue("what is done after today is on no sheet of before");
        herd.EventPlace(-1).ShouldBe(new RecordPlace("sheet H1004-5b20e1", 1));
    }

    [Fact]
    public void A_sheet_that_was_written_the_day_before_may_have_been_used_then()
    {
        var evening = SheetLedger.Of([]).With(First with { Written = First.For.PlusDays(-1) });
        var (cow, kind) = (Read("", ledger: evening).Find("7"), _rulebook.Vocabulary.FindKind("hormone given")!.Id);
        bool Covers(LocalDate day, LocalDate today) => Read("", today, ledger: evening).Coverage.Covers(cow, kind, Day.Number(day), Day.Number(day), strict: false);
        Covers(new(2026, 10, 3), new(2026, 10, 8)).ShouldBeFalse();
        Covers(new(2026, 10, 2), new(2026, 10, 8)).ShouldBeTrue();
        Covers(new(2026, 10, 3), new(2026, 10, 3)).ShouldBeTrue("it is not open before its day");
    }

    [Fact]
    public void A_sheet_is_not_open_before_its_day_and_one_written_since_is_not_known_of()
    {
        Said(Read("", today: new(2026, 10, 3))).ShouldBe("");
        Said(Read("", knownOn: new(2026, 10, 4))).ShouldBe("H1004-5b20e1:1 H1004-5b20e1:2");
    }

    [Theory]
    [InlineData("H1004-5b20e1:1", "2026-10-04")]
    [InlineData("", "2026-10-03")]
    public void A_sheet_drawn_again_leaves_those_taken_off_open_and_one_void_before_its_day_counts_no_more(string open, string written)
    {
        var again = First with { Number = "H1004-77aa01", Written = NodaTime.Text.LocalDatePattern.Iso.Parse(written).Value, Replaces = [First.Number], Rows = [First.Rows[1]] };
        Said(Read("", ledger: SheetLedger.Of([]).With(First).With(again))).ShouldBe((open + " H1004-77aa01:2").Trim());
    }

    [Fact]
    public void The_same_sheet_written_again_adds_no_line_and_a_chain_reads_back_as_it_was_written()
    {
        var ledger = SheetLedger.Of([]).With(First).With(Scans).With(First);
        ledger.Sheets.Select(sheet => sheet.Number).ShouldBe([First.Number, Scans.Number]);
        var read = SheetLedger.Of(ledger.Bytes.ToArray());
        (read.IsBroken, read.LastGoodDay).ShouldBe((false, new LocalDate(2026, 10, 5)));
        read.Sheets[0].Rows[1].ShouldBe(First.Rows[1] with { Writes = read.Sheets[0].Rows[1].Writes });
        read.Sheets[0].Rows[1].Writes.ShouldBe(First.Rows[1].Writes);
    }

    [Theory]
    [InlineData("\"animal\":\"8\"", "\"animal\":\"9\"")]
    [InlineData("2026-10-05", "2026-10-06")]
    public void A_line_that_was_changed_breaks_the_chain_and_ends_promises_before_the_last_day_that_holds(string from, string to)
    {
        var text = Encoding.UTF8.GetString(SheetLedger.Of([]).With(First).With(Scans).Bytes.Span);
        var broken = SheetLedger.Of(Encoding.UTF8.GetBytes(text.Replace(from, to, StringComparison.Ordinal)));
        broken.IsBroken.ShouldBeTrue();
        Should.Throw<InvalidOperationException>(() => broken.With(Scans));
        var herd = Read("2026-10-04,7,hormone given,,in,\n2026-10-04,8,hormone given,,in,", ledger: broken);
        herd.LedgerIsBroken.ShouldBeTrue();
        var (mating, given, test) = (_rulebook.Vocabulary.FindKind("mating")!.Id, _rulebook.Vocabulary.FindKind("hormone given")!.Id, _rulebook.Vocabulary.FindKind("pregnancy test")!.Id);
        var day = broken.LastGoodDay ?? new LocalDate(2026, 10, 1);
        bool Covers(int kind, LocalDate on) => herd.Coverage.Covers(herd.Find("7"), kind, Day.Number(on), Day.Number(on), strict: false);
        Covers(mating, day).ShouldBeTrue("no sheet writes it");
        Covers(given, day).ShouldBeFalse();
        Covers(test, day).ShouldBeFalse();
        Covers(given, day.PlusDays(-1)).ShouldBe(broken.LastGoodDay is not null);
    }

    [Fact]
    public void Rows_that_name_a_sheet_of_which_the_ledger_knows_nothing_end_promises_too()
    {
        var herd = Read("2026-10-01,7,hormone given,,in,H1001-000000:1", ledger: SheetLedger.Of([]));
        herd.LedgerIsBroken.ShouldBeTrue();
        var kind = _rulebook.Vocabulary.FindKind("hormone given")!.Id;
        herd.Coverage.Covers(herd.Find("8"), kind, Day.Number(new(2026, 10, 1)), Day.Number(new(2026, 10, 1)), strict: false).ShouldBeFalse();
        herd.Coverage.Covers(herd.Find("8"), kind, Day.Number(new(2026, 9, 30)), Day.Number(new(2026, 9, 30)), strict: false).ShouldBeTrue();
    }

    [Fact]
    public void A_ledger_with_a_line_that_holds_ends_promises_before_what_a_sheet_that_it_does_not_have_did()
    {
        var herd = Read("2026-10-01,7,hormone given,,in,H1001-000000:1", ledger: SheetLedger.Of([]).With(First));
        var kind = _rulebook.Vocabulary.FindKind("hormone given")!.Id;
        bool Covers(LocalDate day) => herd.Coverage.Covers(herd.Find("8"), kind, Day.Number(day), Day.Number(day), strict: false);
        Covers(new(2026, 10, 2)).ShouldBeFalse();
        Covers(new(2026, 9, 30)).ShouldBeTrue();
    }

    [Fact]
    public void The_fingerprint_of_the_records_is_that_of_the_ledger_too()
    {
        var one = Read("", ledger: SheetLedger.Of([]).With(First)).Fingerprint;
        Read("", ledger: SheetLedger.Of([]).With(First).With(Scans)).Fingerprint.ShouldNotBe(one);
        Read("", ledger: SheetLedger.Of([]).With(First)).Fingerprint.ShouldBe(one);
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    byte[]? IRuleFiles.Read(string path) => Encoding.UTF8.GetBytes(Rules);

    private string Open(string rows) => Said(Read(rows));

    private static string Said(Herd herd) => string.Join(' ', herd.OpenRows.Select(row => $"{row.Sheet.Number}:{row.Row.Row}"));

    private Herd Read(string rows, LocalDate? today = null, LocalDate? knownOn = null, SheetLedger? ledger = null) => HerdReader.Read(
        Encoding.UTF8.GetBytes("animal,born,sex\n7,2019-01-01,F\n8,2019-01-01,F\n9,2019-01-01,F\n"), Encoding.UTF8.GetBytes("date,animal,kind,value,device,sheet row\n" + rows + (rows.Length == 0 ? "" : "\n")),
        _rulebook.Vocabulary, _rulebook.Records! with { Today = today ?? new(2026, 10, 10) }, knownOn, ledger ?? SheetLedger.Of([]).With(First).With(Scans));
}
