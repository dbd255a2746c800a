using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>
/// One cow, 7, born on 1 May 2020 on the farm, and a few rows: what the reference and the judge both say of her. Every kind is
/// complete since 2015 and the records reach 20 September 2026, unless a test says otherwise.
/// </summary>
internal sealed class WrittenFarm : IRuleFiles
{
    private const string Words = """
        event calving   also calvings, not before 15 months of age
        event heat
        event mating
        event transfer
        event mastitis
        event metritis
        event "retained membranes"
        event purchase   joins the herd
        event sale   leaves the herd
        event bull in
        event bull out
        spell running with bull   from bull in until bull out, or in a mob with a male from 6 months of age
        measure body condition   on scale 1 to 10
        measure weight   in kg
        measure serum copper   in umol/L
        test BVD virus   answers positive, negative
        test uterine check   answers clean, discharge
        fact breed   is one of Friesian, Jersey
        fact breeding index   is number
        fact mature weight   in kg
        """;

    private const string All =
        "calving, heat, mating, transfer, mastitis, metritis, \"retained membranes\", purchase, sale, mob, bull in, bull out, body condition, weight, serum copper, BVD virus, uterine check";

    private string _file = "";

    /// <summary>Lines under <c>records</c>.</summary>
    public string Keeps { get; init; } = $"complete for {All} since 2015-01-01";

    public string UpTo { get; init; } = "2026-09-20";

    /// <summary>Rows of <c>animals.csv</c>: number, born, sex, mob, parity, breed, breeding index, mature weight.</summary>
    public ImmutableArray<string> Animals { get; init; } = ["7,2020-05-01,F,Home,,,,"];

    /// <summary>Rows of <c>events.csv</c>: date, animal, kind, value, unit.</summary>
    public ImmutableArray<string> Events { get; init; } = [];

    public string Programme { get; init; } = "collection on 2026-10-12";

    /// <summary>The same farm with other rows.</summary>
    public WrittenFarm With(params string[] events) => new() { Keeps = Keeps, UpTo = UpTo, Animals = Animals, Events = [.. events], Programme = Programme };

    /// <summary>What a condition is of cow 7 on a day, said by both: <c>True</c>, <c>False</c>, <c>Unknown</c>, with <c>expected</c> where it rests on later days.</summary>
    public string Says(string condition, string on) => Rule($"  needs {condition}", on);

    /// <summary>The same for all lines of a rule after its head.</summary>
    public string Rule(string lines, string on, string more = "")
    {
        var (reference, judged) = Judge($"rule \"R\"\n{lines}\n  because \"so\"\n  source \"common practice\"\n{more}", $"choose recipients from \"7\", judged on {on}");
        var day = LocalDatePattern.Iso.Parse(on).Value;
        var rule = reference.Rules.Single(one => one.Name == "R");
        var truth = rule.Days.On(DayNumber.Of(day)).Truth;
        var said = truth + (rule.StrictDays.On(DayNumber.Of(day)).Truth == truth ? "" : " expected");
        var stretch = judged.Rules.Single(one => one.Name == "R").Timeline.At(day);
        (stretch.Truth + (stretch.Expected ? " expected" : "")).ShouldBe(said, "the judge, against the reference");
        return said;
    }

    /// <summary>What a whole list answers of cow 7, said by both.</summary>
    public string Answer(string rules, string choose)
    {
        var (reference, judged) = Judge(rules, choose);
        var said = new StringBuilder(reference.Answer.Answer.ToString())
            .Append(reference.Answer.Answer == Verdicts.Answer.Later ? (reference.ReadyFrom is { } ready ? $" from {Iso(ready)}" : "") : "")
            .Append(reference.Answer.NotBefore is { } notBefore ? $" not before {Iso(notBefore)}" : "").Append(reference.TooLate ? ", too late" : "").ToString();
        var other = new StringBuilder(judged.Answer.ToString())
            .Append(judged.Answer == Verdicts.Answer.Later ? (judged.ReadyFrom is { } from ? $" from {Iso(from)}" : "") : "")
            .Append(judged.NotBefore is { } judgedNotBefore ? $" not before {Iso(judgedNotBefore)}" : "").Append(judged.TooLate ? ", too late" : "").ToString();
        other.ShouldBe(said, "the judge, against the reference");
        return said;
    }

    /// <summary>The rules that the judge names as never holding together, held to the reference's days.</summary>
    public string NeverTogether(string rules, string choose)
    {
        var (reference, judged) = Judge(rules, choose);
        Together.Differs(judged, reference, "7").ShouldBeNull();
        return string.Join(" and ", judged.NeverTogether);
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => Encoding.UTF8.GetBytes(_file);

    private (JudgedAnimal Reference, AnimalJudgement Judged) Judge(string rules, string choose)
    {
        _file = $"{Words}\n\nrules for recipients\n\n{rules}\nrecords \"records\"\n  up to {UpTo}\n  {Keeps}\n\nprogramme \"P\"\n  {Programme}\n  {choose}, for looking only\n";
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        var rulebook = reading.Rulebook;
        var farm = new PlainFarm(
            ["breed", "breeding index", "mature weight"],
            [.. Animals.Select(row => row.Split(',')).Select(cells => new AnimalRow(cells[0], cells[1], cells[2], cells[3], cells[4], [.. cells[5..8]]))],
            [.. Events.Select(row => row.Split(',')).Select(cells => new EventRow(cells[0], cells[1], cells[2], cells.ElementAtOrDefault(3) ?? "", cells.ElementAtOrDefault(4) ?? ""))]);
        var choice = rulebook.Programme!.Choices[0];
        var reference = new ReferenceJudge(rulebook, farm).Judge(choice, animal: 0);
        var herd = HerdReader.Read(FarmCsv.Animals(farm), FarmCsv.Events(farm), rulebook.Vocabulary, rulebook.Records);
        return (reference, new Judge(rulebook, herd).JudgeOne(choice, herd.Find("7")));
    }

    private static string Iso(int? day) => Iso(day is { } known ? DayNumber.Date(known) : null);

    private static string Iso(NodaTime.LocalDate? date) => date?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "never";
}
