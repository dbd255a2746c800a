namespace Byrelaw.Checking.Coverage;

/// <summary>Which sides of a condition one example touches.</summary>
/// <param name="example">Her records.</param>
/// <param name="herd">The same, read.</param>
/// <param name="animal">Her place in it.</param>
internal sealed class Touches(Example example, Herd herd, int animal)
{
    private readonly LocalDate _judged = example.JudgedFrom;

    /// <summary>The sides, in the words of <see cref="Sides"/>.</summary>
    public IEnumerable<string> Of(Finding finding)
    {
        var condition = finding.Condition;
        var subject = condition.Subject;
        var values = finding.Truth == Truth.Unknown ? [Sides.Unknown(subject)] : Values(finding, subject);
        return values.Concat(Sampled(condition)).Concat(condition.Windows.SelectMany(window => OfWindow(window, condition, Subjects.OfRecords(condition))));
    }

    private IEnumerable<string> Values(Finding finding, string subject) => (finding.Condition, finding.Found) switch
    {
        ({ Demand: TimeTest test }, FoundSince { Last: var last }) =>
            Sides.Limits(test.Comparison, test.Low, test.High).Select(limit => Sides.Time(subject, limit, "ago", limit.After(last).CompareTo(_judged))),
        (AgeCondition age, _) when herd.BornEarliest[animal] == herd.BornLatest[animal] =>
            Sides.Limits(age.Test.Comparison, age.Test.Low, age.Test.High).Select(limit => Sides.Age(limit, limit.After(Day.Date(herd.BornLatest[animal])).CompareTo(_judged))),
        (ParityCondition parity, FoundCount found) => Parities(parity.Test, subject, found.AtLeast),
        (ParityCondition parity, FoundNumber found) => Parities(parity.Test, subject, found.Low),
        ({ Demand: CountTest test }, FoundCount found) => Counts(test, subject, found.AtLeast),
        ({ Demand: NumberTest test }, FoundNumber found) => Numbers(test, subject, found),
        (StandingCondition standing, FoundStanding found) => [Sides.Top(standing, (found.Greater + 1) * 100.0 / found.Of)],
        ({ Demand: null }, _) => [Sides.Holds(subject, finding.Truth == Truth.True)],
        _ => [],
    };

    private static IEnumerable<string> Counts(CountTest test, string subject, int count) =>
        Sides.Limits(test.Comparison, test.Low, test.High).Select(limit => Sides.Count(subject, limit, count));

    private static IEnumerable<string> Parities(CountTest test, string subject, double parity) =>
        Sides.Limits(test.Comparison, test.Low, test.High).Select(limit => Sides.Number(subject, limit, parity));

    /// <summary>A share of a fact is compared as per cent of it.</summary>
    private IEnumerable<string> Numbers(NumberTest test, string subject, FoundNumber found) => found.Low.Equals(found.High)
        ? Sides.Limits(test.Comparison, test.Low, test.High).Select(limit => Sides.Number(subject, limit.Value, limit.PercentOf is { } whole ? Share(found.Low, whole) : found.Low, Sides.Whole(limit)))
        : [];

    private double Share(double part, Fact whole) => Math.Round(part * 100 / herd.Facts[whole.Id].Numbers[animal], 9);

    private IEnumerable<string> Sampled(Condition condition)
    {
        if (Sides.FromAnimals(condition) is not { } least)
        {
            return [];
        }

        var windows = condition.Windows;
        var kinds = Subjects.RecordsOf(condition);
        var sampled = example.Records.Where(record => Meant.ByAny(kinds, record) && windows.All(window => IsIn(window, record.Date))).Sum(record => Math.Max(1, record.OfHerMob));
        return [Sides.Count(Sides.Sampled(condition), least, sampled)];
    }

    private bool IsIn(Window window, LocalDate date) => date <= _judged && (window is not InTheLast last || last.Length.After(date) >= _judged);

    private IEnumerable<string> OfWindow(Window window, Condition condition, string subject)
    {
        foreach (var date in DatesOf(condition))
        {
            switch (window)
            {
                case InTheLast last:
                    yield return Sides.Time(subject, last.Length, "ago", last.Length.After(date).CompareTo(_judged));
                    break;
                case AtLeastAgo ago:
                    yield return Sides.Time(subject, ago.Near, "ago", ago.Near.After(date).CompareTo(_judged));
                    break;
                case BetweenAgo ago:
                    yield return Sides.Time(subject, ago.Near, "ago", ago.Near.After(date).CompareTo(_judged));
                    yield return Sides.Time(subject, ago.Far, "ago", ago.Far.After(date).CompareTo(_judged));
                    break;
                case BeforeDate { Date.Value: { } day } before when date <= day:
                    yield return Sides.Time(subject, before.Length, $"before {Subjects.Of(before.Date)}", before.Length.After(date).CompareTo(day));
                    break;
                case FromAfterSpell after when LastOf([after.Spell.Until]) is { } end:
                    yield return Sides.Time(subject, after.Wait, $"after {after.Spell.Name}", after.Wait.After(end).CompareTo(date));
                    break;
                case FromAfterLast after when LastOf(after.Kinds) is { } last:
                    yield return Sides.Time(subject, after.Wait, $"after {Subjects.Of(after.Kinds)}", after.Wait.After(last).CompareTo(date));
                    break;
                case DaysAfter after when DayOf(after.Day) is { } day && day <= date:
                    yield return Sides.Time(subject, after.Length, $"after {Subjects.Of(after.Day)}", after.Length.After(day).CompareTo(date));
                    break;
                case BeforeDay before when DayOf(before.Day) is { } day:
                    yield return Sides.Day(subject, Subjects.Of(before.Day), date.CompareTo(day));
                    break;
                case SinceDate { Date.Value: { } day } since:
                    yield return Sides.Day(subject, Subjects.Of(since.Date), date.CompareTo(day));
                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>The days of the records that a condition looks at; of a spell, those that end it.</summary>
    private IEnumerable<LocalDate> DatesOf(Condition condition)
    {
        var kinds = Subjects.RecordsOf(condition);
        return example.Records.Where(record => Meant.ByAny(kinds, record) && record.Date <= _judged).Select(record => record.Date);
    }

    private LocalDate? DayOf(WindowDay day) => day.Date is { } date ? date.Value : LastOf(day.Last);

    private LocalDate? LastOf(IEnumerable<Kind> kinds) =>
        example.Records.Where(record => record.OfHerMob == 0 && record.Date <= _judged && Meant.ByAny(kinds, record)).Select(record => (LocalDate?)record.Date).Max();
}
