using Byrelaw.Planning.Forecasting;
using Byrelaw.Planning.Pairing;
using Byrelaw.Records.Embryos;

namespace Byrelaw.Reporting.Sheets;

/// <summary>What is said of recipients, embryos and pairs on the day of transfer.</summary>
public static class PairWords
{
    /// <summary><c>13 Oct seen, day 7</c>.</summary>
    public static string HerDay(DayOfTransfer day, Recipient recipient) =>
        $"{Dates.Short(day.Day.PlusDays(-recipient.Day), day.Day.Year)} {(recipient.IsTimed ? "timed" : "seen")}, day {recipient.Day}";

    /// <summary><c>E-03, fresh</c>.</summary>
    public static Wording Embryo(EmbryoToday embryo) => $"{Wording.Bold(embryo.Label)} {(embryo.IsFresh ? "fresh" : "from the tank")}";

    /// <summary><c>E-03 fresh, S-0117</c>.</summary>
    public static Wording EmbryoAndStraw(EmbryoToday embryo) => Straw(embryo) is { Length: > 0 } straw ? (Wording)$"{Embryo(embryo)}, {straw}" : Embryo(embryo);

    /// <summary>What stands on the straw.</summary>
    public static string Straw(EmbryoToday embryo) => embryo.Embryo.Straw ?? "";

    /// <summary><c>7 days old, stage 6, grade 1</c>.</summary>
    public static string Made(EmbryoToday embryo) => string.Join(", ", new[]
    {
        embryo.Age is { } age ? Numbers.Count(age, "day old", "days old") : "age not known",
        embryo.Embryo.Stage is { } stage ? $"stage {stage}" : "stage not known",
        embryo.Embryo.Grade is { } grade ? $"grade {grade}" : "grade not known",
    });

    /// <summary>Its parents: <c>1021 by Alto</c>.</summary>
    public static string Parents(EmbryoToday embryo) => $"{embryo.Embryo.Donor ?? "donor not known"} by {embryo.Embryo.Sire ?? "a bull not known"}";

    /// <summary>What is counted of what the programme wants.</summary>
    public static string Wanted(Stage goal, double mean) => $"{ChanceWords.Mean(mean)} {goal switch
    {
        Stage.Heifers => "live heifers",
        Stage.Alive => "live calves",
        Stage.Transfers => "transfers",
        _ => "pregnant",
    }}";

    /// <summary>What would be lost if another embryo went into her: <c>next best: E-04, 0.02 live heifers fewer</c>.</summary>
    public static string NextBest(DayOfTransfer day, Pair pair)
    {
        var next = pair.NextBest is { } embryo ? $"next best: {embryo.Label}" : "without this one she would have none";
        var lost = pair.Lost;
        return (lost.Wished, lost.Fresh, lost.Kept) switch
        {
            ( > 0, _, _) => $"{next}, but one wish fewer would be met",
            (0, > 0, _) => $"{next}, but one fresh embryo more would be left over",
            (0, 0, > 0) => $"{next}, but a pair of the earlier sheet would change",
            _ when lost.Wanted > 0 && day.HasRates => $"{next}, {(lost.Wanted / 1_000_000.0).ToString("0.00", CultureInfo.InvariantCulture)} {Counted(day.Goal)} fewer",
            _ when lost.Wanted > 0 => $"{next}, and one pair fewer",
            _ when lost.Points > 0 => $"{next}, {Numbers.Of(lost.Points / 1000.0)} points fewer",
            _ => $"{next}, as good",
        };
    }

    /// <summary>Why one whose heat fits is not used.</summary>
    public static string WhyNot(DayOfTransfer day, NotToday not) => not.Why switch
    {
        NotTodayWhy.Donor => "a donor of the programme; to use her all the same: --also " + not.Number,
        NotTodayWhy.BookedForLater => "booked for a later session; to use her all the same: --also " + not.Number,
        NotTodayWhy.LeftOut => "left out by whoever drew this sheet",
        _ => string.Join("; ", OwnFirst(day, not).Select(rule => $"“{rule.Name}” {Said(rule)}{Found(day, rule)}")),
    };

    /// <summary>Why an embryo is left over, and what would settle it.</summary>
    public static string WhyLeft(LeftOver left) => left.NotMet.IsEmpty ? "no recipient that fits is left"
        : Phrases.And([.. left.NotMet.Select(one => one.IsKnown ? $"not {one.Rule.Name}" : $"its {one.Rule.Column} is not known (wanted: {one.Rule.Name}): write it in {EmbryoBook.EmbryosFile} line {left.Embryo.Embryo.Line}")]);

    /// <summary>The program's own rules ask what the farm's own safety rules ask: they are told where those say nothing.</summary>
    private static IEnumerable<RuleJudgement> OwnFirst(DayOfTransfer day, NotToday not) =>
        not.Rules.Where(rule => rule.Rule is null || !day.Draft.Rulebook.Floor.Contains(rule.Rule)).ToList() is { Count: > 0 } own ? own : not.Rules;

    private static string Found(DayOfTransfer day, RuleJudgement rule) => RuleWords.FoundThen(rule, new ListReport(day.Draft, day.Draft.Lists[0])) is { Length: > 0 } found ? $" ({found})" : "";

    private static string Counted(Stage goal) => goal switch
    {
        Stage.Heifers => "heifers",
        Stage.Alive => "calves",
        Stage.Transfers => "transfers",
        _ => "pregnancies",
    };

    private static string Said(RuleJudgement rule) => rule switch
    {
        { Answer: RuleAnswer.NotMet } => "is not met",
        { Answer: RuleAnswer.NotKnown } => "is not known",
        { Answer: RuleAnswer.Broken } => "cannot be read",
        _ => "is only expected: the records do not reach this day",
    };
}
