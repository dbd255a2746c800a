namespace Byrelaw.Reporting;

/// <summary>One animal on one list.</summary>
/// <param name="On">The list.</param>
/// <param name="Animal">Her judgement.</param>
public sealed record AnimalReport(ListReport On, AnimalJudgement Animal)
{
    /// <summary>The rules that stand between her and Ready, in their order.</summary>
    public IEnumerable<RuleJudgement> InTheWay => Animal.Rules.Where(rule => rule.InTheWay);

    /// <summary>Whether she is surely not in the herd: then no rule need be told.</summary>
    public bool IsGone => Animal.Rules.Any(rule => rule is { Gate: Gate.InTheHerd, Answer: RuleAnswer.NotMet });

    /// <summary>For a Later that is to be asked about: the rules that are not known on the stretch on which none fails.</summary>
    public IEnumerable<RuleJudgement> OpenThen
    {
        get
        {
            if (Animal.NotBefore is not { } from)
            {
                return [];
            }

            var (first, last) = (On.List.Choice.JudgedFrom, On.List.Choice.JudgedTo);
            var more = Period.DaysBetween(from > last ? first : from, last);
            return Animal.Rules.Where(rule => rule.Rule?.OnTheDay != true
                && Enumerable.Range(0, more + 1).Any(day => rule.Timeline.At(from.PlusDays(day)).Truth == Truth.Unknown));
        }
    }

    /// <summary>Whether a No for good is one of this session alone, as far as this list can tell: what is wrong may be past by a later one.</summary>
    public bool IsForGoodHere => On.Session is { } session && session < On.Rulebook.Programme?.Aims.Sessions;

    /// <summary>Whether she cannot be ready before the programme's last transfer, whatever is found out.</summary>
    public bool IsTooLate => Animal.TooLate;

    /// <summary>Whether a day is past the programme's last transfer.</summary>
    public bool IsPast(LocalDate day) => day > On.Rulebook.Programme?.LastTransfer;

    /// <summary>The first day on which she is judged: of the list, or for a Later that is to be asked about of the first stretch on which no rule fails.</summary>
    public LocalDate AskedFor => Animal.NotBefore ?? On.List.Choice.JudgedFrom;

    /// <summary>For an Ask: the last day on which something that settles it can be begun; null where nothing is named.</summary>
    public LocalDate? LastUsefulDay => Animal.Answer == Answer.Ask ? Planning.LeadTimes.LastUsefulDay.Of(Animal, AskedFor, On.Name, On.Rulebook.Plans.Tasks) : null;

    /// <summary>For an Ask: whether that day is past by the records, while those that are judged are not.</summary>
    public bool IsOutOfTime => LastUsefulDay is { } last && On.IsPast(last);

    /// <summary>Whether she is to be asked about from a day on that is after those that are judged.</summary>
    public bool IsAskedAfter => Animal.NotBefore > On.List.Choice.JudgedTo;

    /// <summary>For a Later that is to be asked about: what for. After the judging days it may be of any later day.</summary>
    public ImmutableArray<Missing> ThenAsk => !IsAskedAfter ? Animal.ThenAsk
        : [.. Animal.ThenAsk.Select(missing => missing.To >= Animal.NotBefore ? missing with { To = null } : missing)];

    /// <summary>For an Ask: what it takes at the least, by one way or another.</summary>
    public ImmutableArray<Missing> Least => Animal.Open.IsEmpty ? Animal.Settle : [.. Jobs.SelectMany(job => job.Ways).SelectMany(way => way).Distinct()];

    /// <summary>For an Ask: what must be done, each by one way or another.</summary>
    public IReadOnlyList<Job> Jobs => Job.Of(this);

    /// <summary>What is to be asked for her while it can still be of use: of an Ask, or of a Later that is to be asked about.</summary>
    public ImmutableArray<Missing> ToAsk => Animal.Answer == Answer.Ask ? InTime(Least) : Animal.NotBefore is { } day && !IsPast(day) ? InTime(ThenAsk) : [];

    /// <summary>The last day on which to begin what is asked for.</summary>
    public LocalDate LastDayFor(Missing missing) => Planning.LeadTimes.LastUsefulDay.Of(missing, AskedFor, On.Name, On.Rulebook.Plans.Tasks);

    private ImmutableArray<Missing> InTime(ImmutableArray<Missing> asked) => IsOutOfTime ? [] : [.. asked.Where(missing => !On.IsPast(LastDayFor(missing)))];
}
