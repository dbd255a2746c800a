using Byrelaw.Records.Ledger;
using NodaTime;

namespace Byrelaw.Cli.Tests;

/// <summary>A sheet that nobody brought back: until it is on record, nobody on it is offered anything.</summary>
public sealed class OpenSheetTests : IDisposable
{
    private static readonly Sheet LeftInTheVan = new(
        "T0910-7c3e05", new(2026, 9, 10), new(2026, 9, 10), 1, "T", [], [new SheetRow(1, "1007", null, [new SheetEntry("transfer")]), new SheetRow(2, "1012", null, [new SheetEntry("transfer")])]);

    private readonly TemporaryFarm _farm = new();

    public OpenSheetTests() => _farm.Clock.Now = new DateTimeOffset(2026, 9, 21, 8, 0, 0, TimeSpan.Zero);

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_sheet_left_in_the_van_puts_its_animals_in_doubt_until_each_row_is_on_record_or_said_not_to_have_been_done()
    {
        Answer("1007").ShouldBe("On course");

        Write(SheetLedger.Of([]).With(LeftInTheVan));
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(0);
        run.Out.ShouldContain("Sheet T0910-7c3e05 is open: rows 1 and 2.");
        run.Out.ShouldContain("May be in calf: 1007, 1012");
        Answer("1007").ShouldBe("Ask");
        Answer("1033").ShouldBe("No", "she stands on no sheet");
        _farm.Run("why", "spring.byre", "1007").Out.ShouldContain("row 1 of sheet T0910-7c3e05");

        // 1007 got no embryo, 1012 did: two rows close the sheet.
        var lines = File.ReadAllLines(_farm.At("records/events.csv"));
        _farm.Write("records/events.csv", string.Concat(lines.Select((line, i) => line + (i == 0 ? ",sheet row\n" : ",\n"))));
        _farm.Append("records/events.csv", "2026-09-10,1007,not done,transfer,,no corpus luteum,,T0910-7c3e05:1\n2026-09-10,1012,transfer,,,,,T0910-7c3e05:2\n");
        var closed = _farm.Run("draft", "spring.byre");
        closed.Out.ShouldNotContain("is open");
        Answer("1007").ShouldBe("On course");
        Answer("1012").ShouldNotBe("On course");
    }

    [Fact]
    public void A_ledger_that_was_changed_ends_promises_and_every_command_badly()
    {
        Write(SheetLedger.Of([]).With(LeftInTheVan));
        File.WriteAllText(_farm.At("records/sheets.jsonl"), File.ReadAllText(_farm.At("records/sheets.jsonl")).Replace("1012", "1019", StringComparison.Ordinal));
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(1);
        run.Out.ShouldContain("The ledger of sheets was changed, or is not whole");
        run.Out.ShouldContain("0 → On course");
        Answer("1007").ShouldBe("Ask");
    }

    private void Write(SheetLedger ledger) => File.WriteAllBytes(_farm.At("records/sheets.jsonl"), ledger.Bytes.ToArray());

    private string Answer(string number) => _farm.Run("why", "spring.byre", number).Out.Split('\n').Select(line => line.Trim())
        .First(line => line.Length > 0 && "✓→○?✗".Contains(line[0], StringComparison.Ordinal))[2..] is var said ? new[] { "Ready", "On course", "Later", "Ask", "No" }.First(word => said.StartsWith(word, StringComparison.Ordinal)) : "";
}
