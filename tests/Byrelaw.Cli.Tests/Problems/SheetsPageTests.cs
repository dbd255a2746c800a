using Byrelaw.Cli.Tests.Sheets;
using Byrelaw.Records.Ledger;

namespace Byrelaw.Cli.Tests.Problems;

/// <summary>The page about sheets says what <c>record</c> says: of a wrong sheet its problem, and a mended one is written.</summary>
public sealed class SheetsPageTests
{
    [Fact]
    public void The_page_says_what_the_program_says()
    {
        var (told, mended, farm) = (0, 0, Farm());
        var (isMended, hasSheet) = (false, false);
        try
        {
            foreach (var page in ProblemPages.OfSheets)
            {
                ExecutedPage.Verify(ProblemPages.Folder + page, fence =>
                {
                    if (fence.Language == "problems")
                    {
                        (told, isMended) = (told + 1, true);
                        var run = Record(farm);
                        run.Code.ShouldBe(ExitCode.Bad, run.ToString());
                        return run.Err.Split("\nNothing of ")[0].TrimEnd('\n') + "\n";
                    }

                    var name = fence.Rest.Contains("file ", StringComparison.Ordinal) ? fence.Rest.Split("file ")[1] : "sheet.csv";
                    farm.Farm.Write(name, fence.Rest.StartsWith("no-end", StringComparison.Ordinal) ? fence.Text.TrimEnd('\n') : fence.Text);
                    hasSheet |= name == "sheet.csv";
                    if (isMended && hasSheet)
                    {
                        var run = Record(farm);
                        run.Code.ShouldBe(ExitCode.Done, run.ToString());
                        mended++;
                        farm.Dispose();
                        (farm, isMended, hasSheet) = (Farm(), false, false);
                    }

                    return null;
                });
            }
        }
        finally
        {
            farm.Dispose();
        }

        told.ShouldBe(13);
        mended.ShouldBe(told);
    }

    private static Run Record(TwoCows farm) => farm.Farm.Run("record", "spring.byre", "sheet.csv");

    private static TwoCows Farm()
    {
        var farm = new TwoCows();
        farm.On(2026, 10, 7);
        SheetRow Row(int row, string animal) => new(row, animal, null, [new SheetEntry("hormone given", "in")]);
        var ledger = SheetLedger.Of([])
            .With(new Sheet("H1004-5b20e1", new(2026, 10, 4), new(2026, 10, 4), 1, "H", [], [Row(1, "7"), Row(2, "8"), Row(3, "9")]))
            .With(new Sheet("S1004-aa01bc", new(2026, 10, 4), new(2026, 10, 4), 1, "S", [], [new SheetRow(1, "6", null, [new SheetEntry("pregnancy test")])]));
        File.WriteAllBytes(farm.Farm.At("records/sheets.jsonl"), ledger.Bytes.ToArray());
        farm.Farm.Write("records/events.csv", string.Concat(farm.Events.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select((line, at) => line + (at == 0 ? ",device,batch,sheet row\n" : ",,,\n"))) + "2026-10-04,9,hormone given,,,,in,A-17,H1004-5b20e1:3\n");
        return farm;
    }
}
