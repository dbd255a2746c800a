using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Planning;
using Byrelaw.Planning.Sheets;

namespace Byrelaw.Judging.Tests.Sheets;

/// <summary>A small farm on the morning of its first treatment, some of whose cows were begun or served, and the sheets of its plan.</summary>
internal sealed class SheetFarm : IRuleFiles
{
    public static readonly LocalDate Today = new(2026, 10, 4);

    private const string Text = """
        event calving  not before 15 months of age
        event abortion
        event mastitis
        event mating
        event transfer
        event drying off
        event bull in
        event bull out
        event sale  leaves the herd
        event purchase  joins the herd
        event hormone given  marks treatment, with method is text, with session is number, with step is number, with device is one of "in", out, gone
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, blood, milk, hand, blank is hand
        fact origin  is one of home-bred, bought

        method "Insert"
          day 0 "Put in the device", device in
          day 7 "Take out the device; prostaglandin", device out
          day 9 "GnRH"
          counts as heat on day 9
          because "so"

        rules for treatment
        safety rule "Well"
          needs no mastitis in the last 7 days
          because "so"
        rule "Forty days calved"
          needs at least 40 days since last calving
          because "so"
        rule "No other hormone under way"
          needs no hormone given in the last 10 days
          because "so"
        rules for recipients
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "so"

        records "records"
          up to 2026-10-04
          complete for calving, abortion, mastitis, mating, transfer, drying off, bull in, bull out, sale, purchase, hormone given, pregnancy test, mob since 2015-01-01

        programme "P"
          collection on 2026-10-12, 2 times every 14 days
          transfer 8 days after collection, over 2 days
          date first treatment 16 days before first transfer
          prepare recipients by "Insert"
          choose treatment from females, judged on first treatment
          choose recipients from females, judged from first transfer to final transfer
        """;

    public SheetFarm(ImmutableArray<EventRow> events)
    {
        Farm = new PlainFarm(["origin"], [.. Enumerable.Range(1, 5).Select(cow => new AnimalRow($"{cow}", "2020-05-01", "F", "Home", "", ["home-bred"]))], events) { DetailNames = ["method", "session", "step", "device"] };
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        Rulebook = reading.Rulebook;
        var herd = Believed.Of(Rulebook, HerdReader.Read(FarmCsv.Animals(Farm), FarmCsv.Events(Farm), Rulebook.Vocabulary, Rulebook.Records));
        Plan = Planner.Plan(Rulebook, herd, Today);
        Sheets = [.. MorningSheets.Of(Plan).OfType<HormoneSheet>()];
    }

    public PlainFarm Farm { get; }

    public Rulebook Rulebook { get; }

    public Plan Plan { get; }

    public ImmutableArray<HormoneSheet> Sheets { get; }

    /// <summary>Everyone who stands to be given something, a spare among them.</summary>
    public IEnumerable<(HormoneSheet Sheet, HormoneRow Row)> Given => Sheets.SelectMany(sheet => sheet.Rows.Concat(sheet.Spares).Where(row => row.IsGiven).Select(row => (sheet, row)));

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => Encoding.UTF8.GetBytes(Text);
}
