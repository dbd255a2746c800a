namespace Byrelaw.Cli.Tests.Sheets;

/// <summary>A small farm on the morning on which two cows get a device: 7 and 8, with 9 spare, and 6 who was served. Its words are those of the base files, as far as sheets need them.</summary>
internal sealed class TwoCows : IDisposable
{
    public const string Vocabulary =
        """
        event calving
        event heat
        event mating
        event transfer  marks transfer, with embryo is text, with side is one of left, right, with operator is text, with straw read is text, with read by is text
        event bull in
        event bull out
        event hormone given  marks treatment, with method is text, with session is number, with step is number, with device is one of "none", "in", out, gone, blank is "none", with batch is text, with given by is text
        event timed heat
        event drying off
        event abortion
        event purchase  joins the herd
        event sale      leaves the herd
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, hand, with done by is text
        measure body condition  on scale 1 to 10
        measure weight  in kg
        fact official identity  is identity  also official id
        fact origin  is one of home-bred, bought

        """;

    public const string Rules =
        """
        use "vocabulary.byre"

        method "Insert"
          day 0 "Put in the progesterone device", device in
          day 7 "Take out the device; prostaglandin", device out
          counts as heat on day 9
          accepted on the day 80%, weight 30
          because "Every animal has her day."
          source  "common practice, no source"

        rules for treatment

        safety rule "Not served before a hormone"
          needs no mating or transfer since last calving
          because "Prostaglandin ends a pregnancy."
          source  "common practice, no source"

        rule "No device left in her"
          needs no hormone given with device "in" since last hormone given with device one of out, gone
          because "One that was forgotten is taken out first."
          source  "common practice, no source"

        rules for recipients

        safety rule "Not in calf"
          needs no mating or transfer since last calving
          because "The pipette ends a pregnancy."
          source  "common practice, no source"

        """;

    public const string Programme =
        """
        use "recipients.byre"

        records "records"
          up to 2026-10-03
          complete for calving, heat, mating, transfer, bull in, bull out, drying off, abortion, purchase, pregnancy test, hormone given since 2020-01-01
          no mob on this farm

        programme "Two Cows, spring 2026"
          prepare 2 recipients by "Insert"
          date first treatment 16 days before first transfer
          collection on 2026-10-12
          transfer 8 days after collection
          choose treatment from females, judged on first treatment
          choose recipients from females, judged on first transfer

        """;

    public TwoCows()
    {
        Farm.Write("vocabulary.byre", Vocabulary);
        Farm.Write("recipients.byre", Rules);
        Farm.Write("spring.byre", Programme);
        Farm.Write("records/animals.csv", "animal,official_id,born,sex\n6,554000700040006,2020-08-01,F\n7,554000700040007,2020-08-02,F\n8,554000700040008,2020-08-03,F\n9,554000700040009,2020-08-04,F\n");
        Farm.Write("records/events.csv", "date,animal,kind,value,unit,note\n" + string.Concat(new[] { 6, 7, 8, 9 }.Select(cow => $"2026-07-{cow:00},{cow},calving,,,\n")) + "2026-09-20,6,mating,,,\n");
        On(2026, 10, 4);
    }

    /// <summary>The same farm on the day of the machine's clock, for the program as a process of its own: all its days are moved.</summary>
    public static TwoCows OfToday()
    {
        var farm = new TwoCows { Morning = DateTime.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) };
        var days = (DateTime.Now.Date - new DateTime(2026, 10, 4)).Days;
        foreach (var file in new[] { "spring.byre", "records/events.csv" })
        {
            File.WriteAllText(farm.Farm.At(file), System.Text.RegularExpressions.Regex.Replace(File.ReadAllText(farm.Farm.At(file)), @"2026-\d\d-\d\d",
                day => DateTime.Parse(day.Value, CultureInfo.InvariantCulture).AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        }

        farm.On(DateTime.Now.Year, DateTime.Now.Month, DateTime.Now.Day);
        return farm;
    }

    /// <summary>The day on which two get a device.</summary>
    public string Morning { get; private init; } = "2026-10-04";

    public TemporaryFarm Farm { get; } = new();

    public string Events => File.ReadAllText(Farm.At("records/events.csv"));

    public void Dispose() => Farm.Dispose();

    /// <summary>The clock at eight in the morning.</summary>
    public void On(int year, int month, int day) => Farm.Clock.Now = new DateTimeOffset(year, month, day, 8, 0, 0, TimeSpan.Zero);

    /// <summary>Draws the sheets of a morning and gives the number of the first.</summary>
    public string Draw(string day = "2026-10-04")
    {
        var run = Farm.Run("plan", "spring.byre", "--sheet", day);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        return run.Out.Split('\n').First(line => line.Contains(" · H", StringComparison.Ordinal)).Split(" · ")[^1].Trim();
    }

    public string[] Sheet(string number) => File.ReadAllLines(Farm.At($"sheets/{number}.csv"));

    /// <summary>Writes into cells of a sheet, by row and heading.</summary>
    public string Fill(string number, params (int Row, string Heading, string Cell)[] cells)
    {
        var lines = Sheet(number).Select(line => line.Split(',')).ToArray();
        foreach (var (row, heading, cell) in cells)
        {
            Array.IndexOf(lines[0], heading).ShouldBeGreaterThanOrEqualTo(0, $"{heading} in {string.Join(',', lines[0])}");
            lines[row][Array.IndexOf(lines[0], heading)] = cell;
        }

        Farm.Write($"sheets/{number}.csv", string.Concat(lines.Select(line => string.Join(',', line) + "\r\n")));
        return $"sheets/{number}.csv";
    }

    /// <summary>What the list for treatment says of each: <c>6 no, 7 ask</c>.</summary>
    public string Treatment()
    {
        using var json = System.Text.Json.JsonDocument.Parse(Farm.Run("draft", "spring.byre", "--format", "json").Out);
        return string.Join(", ", json.RootElement.GetProperty("lists").EnumerateArray().First(one => one.GetProperty("list").GetString() == "treatment").GetProperty("animals").EnumerateArray()
            .Select(animal => $"{animal.GetProperty("animal").GetString()} {animal.GetProperty("answer").GetString()}").Order(StringComparer.Ordinal));
    }
}
