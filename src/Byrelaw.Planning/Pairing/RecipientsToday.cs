using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.Pairing;

/// <summary>
/// Who may be given an embryo on a day. All rules of the recipients' list are asked, those of the day itself too, on that one day; nothing may rest on what is only expected. A rule of the day that is not
/// known is passed over only where somebody with a hand on her finds it out: then nothing is thawed before.
/// </summary>
internal sealed class RecipientsToday
{
    private readonly Rulebook _rulebook;
    private readonly LocalDate _day;
    private readonly Judge _judge;
    private readonly TreatmentRows _treatments;
    private readonly HashSet<string> _donors;
    private readonly HashSet<string> _later;
    private readonly PairingAsked _asked;

    /// <param name="rulebook">The rules, with the programme on the session's days.</param>
    /// <param name="judge">Judges by them.</param>
    /// <param name="session">The session of the day.</param>
    /// <param name="asked">The day, and whom to take besides or to leave out.</param>
    public RecipientsToday(Rulebook rulebook, Judge judge, Session session, PairingAsked asked)
    {
        (_rulebook, _judge, _day, _asked) = (rulebook, judge, asked.Day, asked);
        _treatments = new TreatmentRows(judge.Herd, rulebook.Plans);
        _donors = ProgrammeLists.Donors(rulebook.Programme!) is { From: ChoiceFrom.Named } donors ? [.. donors.Animals] : [];
        _later = [.. rulebook.Programme!.Aims.Bookings.Where(booking => booking.Session > session.Number).Select(booking => booking.Animal)];
    }

    /// <summary>Those who may be, and those whose heat fits and who may not; both by number.</summary>
    public (ImmutableArray<Recipient> Fit, ImmutableArray<NotToday> Out) Of(ListJudgement list)
    {
        var heats = HerDays();
        var (fit, not) = (ImmutableArray.CreateBuilder<Recipient>(), ImmutableArray.CreateBuilder<NotToday>());
        foreach (var animal in list.Animals)
        {
            if (heats.Of(animal.Animal) is not { } heat)
            {
                continue;
            }

            if (WhyNot(animal) is { } why)
            {
                not.Add(new NotToday(animal.Number, heat.Day, why, why == NotTodayWhy.Rules ? [.. animal.Rules.Where(IsInTheWay)] : []));
            }
            else
            {
                fit.Add(new Recipient(animal, heat.Day)
                {
                    IsTimed = heat.IsTimed,
                    ToExamine = [.. animal.Rules.Where(rule => rule.Answer == RuleAnswer.NotKnown).SelectMany(Missing).Select(missing => missing.Subject).Distinct()],
                    Method = _treatments.Of(animal.Animal).LastOrDefault(row => row.Method is { IsForDonors: false }).Method,
                });
            }
        }

        return (fit.ToImmutable(), not.ToImmutable());
    }

    private NotTodayWhy? WhyNot(AnimalJudgement animal) =>
        _asked.Without.Contains(animal.Number) ? NotTodayWhy.LeftOut
        : _donors.Contains(animal.Number) && !_asked.Also.Contains(animal.Number) ? NotTodayWhy.Donor
        : _later.Contains(animal.Number) && !_asked.Also.Contains(animal.Number) ? NotTodayWhy.BookedForLater
        : animal.Answer != Answer.Ready || animal.Rules.Any(IsInTheWay) ? NotTodayWhy.Rules
        : null;

    private bool IsInTheWay(RuleJudgement rule) => rule.Expected || rule.Answer switch
    {
        RuleAnswer.Met or RuleAnswer.DoesNotApply => false,
        RuleAnswer.NotKnown => rule.Rule?.OnTheDay != true || !CanBeExamined(rule),
        _ => true,
    };

    /// <summary>Whether what is missing is a look at her that nobody took yet: a result that is pending, or a row that cannot be read, may have said that she is not fit.</summary>
    private bool CanBeExamined(RuleJudgement rule) => Missing(rule).ToList() is { Count: > 0 } missing && missing.TrueForAll(one =>
        one.Reason == MissingReason.NoResult && _rulebook.Vocabulary.FindKind(one.Subject)?.Declaration is TestKind { InTheYards: true } or MeasureKind { InTheYards: true });

    private static IEnumerable<Missing> Missing(RuleJudgement rule) => rule.Findings.Where(finding => finding.Decides && finding.Truth == Truth.Unknown).SelectMany(finding => finding.Missing);

    /// <summary>The judge itself is asked on which day after her last heat each is: one of whom it is not known has none.</summary>
    private HeatDays HerDays()
    {
        var (aims, seen) = (_rulebook.Programme!.Aims, _rulebook.Vocabulary.FindKind("heat") as EventKind);
        EventKind[] any = [.. new[] { seen, _rulebook.Vocabulary.FindKind("timed heat") as EventKind }.OfType<EventKind>()];
        var days = new HeatDays();
        for (var day = aims.RecipientDayFrom; any.Length > 0 && day <= aims.RecipientDayTo; day++)
        {
            days.Add(day, On(day, any), seen is null ? null : On(day, seen));
        }

        return days;
    }

    private Truth[] On(int day, params EventKind[] kinds) => _judge.TruthsOn(
        new TimeSinceCondition(new TimeTest(Comparison.Between, new(day, TimeUnit.Days), new(day, TimeUnit.Days)), [.. kinds]) { Span = default }, _day);

    private sealed class HeatDays
    {
        private readonly List<(int Day, Truth[] Any, Truth[]? Seen)> _days = [];

        public void Add(int day, Truth[] any, Truth[]? seen) => _days.Add((day, any, seen));

        public (int Day, bool IsTimed)? Of(int animal)
        {
            foreach (var (day, any, seen) in _days)
            {
                if (any[animal] == Truth.True)
                {
                    return (day, seen?[animal] != Truth.True);
                }
            }

            return null;
        }
    }
}
