using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Planning.Calendar;
using Byrelaw.Planning.Sheets;

namespace Byrelaw.Judging.Tests.Sheets;

/// <summary>Whoever stands to be treated passes both checks on her own days, by the slow evaluator that is written from the design and knows nothing of sheets.</summary>
public sealed class SheetsBySlowJudgeTests
{
    /// <summary>A calving long enough ago or not; a service, a scan, an illness; a beginning, its later days; days around today, which is 4 October.</summary>
    private static readonly Gen<ImmutableArray<EventRow>> Events = Gen.Select(Gen.Int[1, 5], Gen.Int[0, 9], Gen.Int[0, 60], Gen.Int[0, 3]).Array[0, 9].Select(rows => (ImmutableArray<EventRow>)
    [
        .. Enumerable.Range(1, 5).Select(cow => new EventRow($"2026-0{5 + (cow % 3)}-15", $"{cow}", "calving") { Details = ["", "", "", ""] }),
        .. rows.Select(row => Row(row.Item1, row.Item2, SheetFarm.Today.PlusDays(-row.Item3), row.Item4)),
    ]);

    [Fact]
    public void Whoever_stands_to_be_treated_passes_both_checks_on_her_own_days_and_less_information_lets_nobody_in()
    {
        var given = 0;
        Gen.Select(Events, Gen.Int[0, 13]).Hold(
            one =>
            {
                var farm = new SheetFarm(one.Item1);
                var all = farm.Given.ToList();

                // The slow evaluator takes its time: it is asked of a few, drawn by the case.
                foreach (var (sheet, row) in all.Where((given, i) => i % Math.Max(1, all.Count / 2) == one.Item2 % Math.Max(1, all.Count / 2)).OrderByDescending(given => given.Row.Day).Take(1))
                {
                    var isBegun = sheet.Session.Named.Any(animal => animal.Animal == row.Who.Animal && animal.IsBegun);
                    Unmet(farm, sheet, row, isBegun).ShouldBeNull($"{row.Who.Number} on {sheet.Date}, day {row.Day}");
                    Interlocked.Increment(ref given);
                }

                // One row that nobody can read any more.
                var smudged = new SheetFarm([.. one.Item1.Select((row, i) => i == one.Item2 % one.Item1.Length ? row with { Date = "smudged" } : row)]);
                smudged.Given.Select(Of).Except(all.Select(Of)).ShouldBeEmpty("less information lets nobody in");
            },
            count: 6, show: one => string.Join('\n', one.Item1.Select(row => $"{row.Date},{row.Animal},{row.Kind},{row.Value},{string.Join(',', row.Details)}")) + $"\nsmudged: {one.Item2 % one.Item1.Length}");
        given.ShouldBeGreaterThan(2, "else nothing was tried");
    }

    [Fact]
    public void One_who_is_begun_stands_on_her_own_days_and_one_served_since_gets_nothing_but_her_device_out()
    {
        // Both devices went in on 1 October; cow 2 was served a day later, and nobody knows whether she is in calf.
        var farm = new SheetFarm(
        [
            .. Enumerable.Range(1, 3).Select(cow => new EventRow("2026-06-15", $"{cow}", "calving") { Details = Blank }),
            new EventRow("2026-10-01", "1", "hormone given") { Details = ["Insert", "1", "0", "in"] },
            new EventRow("2026-10-01", "2", "hormone given") { Details = ["Insert", "1", "0", "in"] },
            new EventRow("2026-10-02", "2", "mating") { Details = Blank },
        ]);
        var out8 = farm.Sheets.Single(sheet => sheet.Date == new LocalDate(2026, 10, 8));
        out8.Rows.Select(row => (row.Who.Number, row.Day, row.IsGiven, row.DeviceComesOut)).ShouldBe([("1", 7, true, true), ("2", 7, false, true)]);
        out8.InCalf.Take.ShouldContain("2");
        Unmet(farm, out8, out8.Rows[0], isBegun: true).ShouldBeNull();
        Unmet(farm, out8, out8.Rows[1], isBegun: true).ShouldNotBeNull();
        farm.Sheets.Where(sheet => sheet.Date == SheetFarm.Today).SelectMany(sheet => sheet.Rows).Select(row => row.Who.Number).ShouldNotContain("2");
    }

    [Fact]
    public void A_device_that_should_be_out_by_now_is_due_today_whoever_she_is()
    {
        var farm = new SheetFarm([new EventRow("2026-09-20", "4", "hormone given") { Details = ["Insert", "", "0", "in"] }]);
        var row = farm.Sheets.Single(sheet => sheet.Date == SheetFarm.Today).Rows.Single(row => row.Who.Number == "4");
        (row.IsGiven, row.DeviceComesOut, row.NotGiven!.DeviceSince).ShouldBe((false, true, new LocalDate(2026, 9, 20)));
    }

    private static (LocalDate, string) Of((HormoneSheet Sheet, HormoneRow Row) one) => (one.Sheet.Date, one.Row.Who.Number);

    /// <summary>What does not surely hold; null where all of it does. Of one who is begun, and on later days, the safety rules and the floor are asked alone.</summary>
    private static string? Unmet(SheetFarm farm, HormoneSheet sheet, HormoneRow row, bool isBegun)
    {
        var programme = sheet.Session.Session.Programme;
        var rulebook = farm.Rulebook with { Programme = programme };
        var that = new ReferenceJudge(rulebook, farm.Farm, null, sheet.Date);
        var (treatment, recipients) = (ProgrammeLists.Treatment(programme)!, ProgrammeLists.Recipients(programme)!);
        var day = DayNumber.Of(sheet.Date);
        var safety = rulebook.Rules.Where(rule => rule.IsSafety).Select(rule => rule.Name).ToHashSet();
        var unsafeRule = that.Judge(treatment, row.Who.Animal).Rules.Where(rule => safety.Contains(rule.Name)).Concat(that.FloorOf(row.Who.Animal, sheet.Date, sheet.Date)).FirstOrDefault(rule => rule.Days.On(day).Truth != Truth.True);
        return unsafeRule is not null ? $"{unsafeRule.Name} is {unsafeRule.Days.On(day).Truth}"
            : isBegun ? null
            : row.Day == 0 && !that.Judge(treatment, row.Who.Animal).Answer.Answer.MayBeUsed() ? "she may not be treated"
            : !new ReferenceJudge(rulebook, farm.Farm).Judge(recipients, row.Who.Animal).Answer.Answer.MayBeUsed() ? "she may not carry"
            : null;
    }

    private static EventRow Row(int cow, int what, LocalDate on, int more)
    {
        var (kind, value, details) = what switch
        {
            0 => ("mating", "", Blank),
            1 => ("pregnancy test", "empty", more < 2 ? ["ultrasound", "", "", ""] : Blank),
            2 => ("pregnancy test", "pregnant", Blank),
            3 => ("mastitis", "", Blank),
            4 => ("bull in", "", Blank),
            5 => ("bull out", "", Blank),
            6 => ("drying off", "", Blank),
            7 => ("hormone given", "", ["Insert", "", more == 3 ? "" : "0", more == 1 ? "in" : ""]),
            8 => ("hormone given", "", ["Insert", "", "7", more == 1 ? "in" : "out"]),
            _ => ("hormone given", "", more == 0 ? ["Insert", "1", "0", ""] : Blank),
        };

        // Beginnings lie near today.
        var date = what >= 7 ? SheetFarm.Today.PlusDays(-((Period.DaysBetween(on, SheetFarm.Today)) % 9)) : on;
        return new EventRow(LocalDatePattern.Iso.Format(date), $"{cow}", kind, value) { Details = details };
    }

    private static readonly ImmutableArray<string> Blank = ["", "", "", ""];
}
