using System.Text.Json;

namespace Byrelaw.Cli.Tests.Sheets;

/// <summary>
/// A small farm on the morning of 20 October, with four embryos, three of them fresh and seven days old, and six cows: 11, 12 and 13 were in heat on the 13th, 14 on the 14th, 15 too early, and 16 is a donor. 11 and 12 were examined.
/// </summary>
internal sealed class TransferMorning : IDisposable
{
    public const string Day = "2026-10-20";

    private const string Vocabulary =
        """
        event calving
        event heat
        event mating
        event transfer  marks transfer, with embryo is text, with side is one of left, right, with ease of passing on scale 1 to 3, with operator is text, with straw read is text, with read by is text
        event bull in
        event bull out
        event drying off
        event abortion
        event purchase  joins the herd
        event sale      leaves the herd
        event embryo frozen     of embryos
        event embryo discarded  of embryos
        hint embryo may be transfer
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, hand, with done by is text
        test ovary check  answers corpus luteum, follicle, quiet  in the yards, with side is one of left, right
        fact official identity  is identity  also official id
        fact origin  is one of home-bred, bought

        """;

    private const string Rules =
        """
        use "vocabulary.byre"

        assume pregnant per transfer fresh 42%, weight 40
          source "common practice, no source"
        assume pregnant per transfer frozen 35%, weight 30
          source "common practice, no source"
        assume gestation 282 days, spread 6 days
          source "common practice, no source"

        rules for recipients

        safety rule "Not in calf"
          needs no mating or transfer since last calving
          because "The pipette ends a pregnancy."
          source  "common practice, no source"

        rule "Corpus luteum felt"
          needs latest ovary check in the last 2 days is corpus luteum
          on the day
          because "No corpus luteum, no transfer."
          source  "common practice, no source"

        prefer "Early calver"
          at least 100 days since last calving
          counts 1
          because "Long past it."
          source  "common practice, no source"

        rules for donors

        """;

    private const string Programme =
        """
        use "recipients.byre"

        records "records"
          up to 2026-10-20
          complete for calving, heat, mating, transfer, bull in, bull out, drying off, abortion, purchase, pregnancy test since 2020-01-01
          no mob on this farm

        programme "Six Cows, spring 2026"
          wants 2 pregnancies, 50% sure
          collection on 2026-10-12, 2 times every 14 days
          transfer 8 days after collection
          choose donors from "16", judged on collection
          choose recipients from females, judged on first transfer

        """;

    private const string Embryos =
        """
        embryo,straw,donor,sire,made by,collected,frozen on,age frozen,stage,grade
        E-01,S-0113,16,Alto,collected eggs,2026-10-12,,,6,1
        E-03,S-0117,16,Alto,collected eggs,2026-10-12,,,7,2
        E-04,S-0131,16,Alto,collected eggs,2026-10-12,,,6,4
        E-17,S-0096,16,Alto,flush,2025-11-04,2025-11-04,7,6,1

        """;

    public TransferMorning()
    {
        Farm.Write("vocabulary.byre", Vocabulary);
        Farm.Write("recipients.byre", Rules);
        Farm.Write("spring.byre", Programme);
        Farm.Write("records/animals.csv", "animal,official_id,born,sex\n" + string.Concat(Enumerable.Range(11, 6).Select(cow => $"{cow},5540007000400{cow},2020-08-01,F\n")));
        Farm.Write("records/events.csv", "date,animal,kind,value,unit,note\n" + string.Concat(Enumerable.Range(11, 6).Select(cow => $"2026-07-{cow:00},{cow},calving,,,\n"))
            + "2026-10-13,11,heat,,,\n2026-10-13,12,heat,,,\n2026-10-13,13,heat,,,\n2026-10-14,14,heat,,,\n2026-10-08,15,heat,,,\n2026-10-13,16,heat,,,\n"
            + "2026-10-20,11,ovary check,corpus luteum,,\n2026-10-20,12,ovary check,corpus luteum,,\n");
        Farm.Write("records/embryos.csv", Embryos);
        Farm.Write("records/pedigree.csv", "animal,sex\nAlto,M\n");
        Farm.Clock.Now = new DateTimeOffset(2026, 10, 20, 6, 0, 0, TimeSpan.Zero);
    }

    public TemporaryFarm Farm { get; } = new();

    public void Dispose() => Farm.Dispose();

    public Run Pair(params string[] more) => Farm.Run(["pair", "spring.byre", .. more]);

    /// <summary>Draws the run sheet, and gives its number.</summary>
    public string Draw(params string[] more)
    {
        var run = Pair(more);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        return run.Out.Split('\n')[0].Split(" · ")[^1].Trim();
    }

    /// <summary>The rows of a sheet: <c>11 E-17</c>, or <c>14</c> for one who waits.</summary>
    public string[] Rows(string number) => [.. Lines(number).Skip(1).Select(line => $"{line[4]} {line[Array.IndexOf(Lines(number)[0], "transfer: embryo")]}".Trim())];

    /// <summary>Writes into cells of a sheet, by row and heading.</summary>
    public string Fill(string number, params (int Row, string Heading, string Cell)[] cells)
    {
        var lines = Lines(number);
        foreach (var (row, heading, cell) in cells)
        {
            lines[row][Array.IndexOf(lines[0], heading)] = cell;
        }

        Farm.Write($"sheets/{number}.csv", string.Concat(lines.Select(line => string.Join(',', line) + "\r\n")));
        return $"sheets/{number}.csv";
    }

    /// <summary>What the recipients' list says of one on the first day of transfers.</summary>
    public string Answer(string animal)
    {
        using var json = JsonDocument.Parse(Farm.Run("draft", "spring.byre", "--format", "json", "--on", Day).Out);
        return json.RootElement.GetProperty("lists").EnumerateArray().First(one => one.GetProperty("list").GetString() == "recipients").GetProperty("animals").EnumerateArray()
            .First(one => one.GetProperty("animal").GetString() == animal).GetProperty("answer").GetString()!;
    }

    /// <summary>What is said of the embryos.</summary>
    public string Embryo() => Farm.Run("records", "records", "--rules", "spring.byre").Out;

    private string[][] Lines(string number) => [.. File.ReadAllLines(Farm.At($"sheets/{number}.csv")).Select(line => line.Split(','))];
}
