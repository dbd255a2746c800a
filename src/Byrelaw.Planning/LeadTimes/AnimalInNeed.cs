namespace Byrelaw.Planning.LeadTimes;

/// <summary>An animal for which a task is to be done.</summary>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Why">Why she needs it.</param>
/// <param name="Subject">What is missing: an event, measure or test; null where the task settles nothing that is on record.</param>
/// <param name="Rule">The rule that asks for it; null likewise.</param>
/// <param name="MoreOfTheMob">Where her mob lacks results: how many more animals of it; else 0.</param>
public sealed record AnimalInNeed(string Number, Need Why, string? Subject, string? Rule, int MoreOfTheMob)
{
    /// <summary>The days on which it may be begun so that it does it, in runs; empty where nobody worked them out.</summary>
    public ImmutableArray<DateInterval> Days { get; init; } = [];

    /// <summary>Later sessions for which it holds too, and the day from which it must be done for that.</summary>
    public ImmutableArray<(int Session, LocalDate From)> AlsoFor { get; init; } = [];

    /// <summary>Whether the sample is taken and only its result is awaited: nobody need start anything for her.</summary>
    public bool IsAwaited { get; init; }

    /// <summary>The method by which she is only watched, and takes no place; empty for one who would take a place, or is a donor.</summary>
    public string WatchedBy { get; init; } = "";

    /// <summary>From this day on it is not spoilt by a transfer that slips by a few days; null where nobody worked it out.</summary>
    public LocalDate? Steady { get; init; }

    /// <summary>Who waits for its result too, session by session.</summary>
    public ImmutableArray<FindingOut.WaitsForIt> Waiting { get; init; } = [];

    /// <summary>
    /// Those whose rules miss what the task settles, by what their judgements say. Animals that are out for another reason, which no time and
    /// no task can turn, are left out: nobody samples a cow that is sold. A task that settles nothing on record is for everyone who may be used.
    /// </summary>
    public static ImmutableArray<AnimalInNeed> Of(PlanTask task, ListJudgement list)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(list);
        var used = list.Animals.Where(animal => animal.Answer is not (Answer.No or Answer.Later));
        if (task.SettlesRules.IsEmpty && task.SettlesKinds.IsEmpty)
        {
            return [.. used.Select(animal => new AnimalInNeed(animal.Number, Need.OnTheList, null, null, 0))];
        }

        var subjects = task.SettlesKinds.Select(kind => NameFolding.Fold(kind.Name)).ToHashSet();
        return [.. list.Animals.Where(MayBeUsed).Select(animal => Find(task, subjects, animal)).OfType<AnimalInNeed>()];

        bool MayBeUsed(AnimalJudgement animal) => animal.Answer switch
        {
            Answer.Later when animal is { NotBefore: not null, TooLate: false } => true,
            Answer.No or Answer.Later => animal.Rules.Where(rule => rule.InTheWay).All(rule => rule.Answer == RuleAnswer.NotKnown || Settles(task, subjects, rule).Subject is not null),
            _ => true,
        };
    }

    private static AnimalInNeed? Find(PlanTask task, HashSet<string> subjects, AnimalJudgement animal)
    {
        foreach (var rule in animal.Rules.Where(rule => rule.InTheWay))
        {
            if (Settles(task, subjects, rule) is { Subject: { } subject } found)
            {
                var heldBefore = rule.Timeline.Stretches.Any(stretch => stretch.Truth == Truth.True);
                return new(animal.Number, rule.Answer == RuleAnswer.NotMet ? Need.Fails : heldBefore ? Need.Lapses : Need.Missing, subject, rule.Name, found.More) { IsAwaited = found.IsAwaited };
            }
        }

        return null;
    }

    /// <summary>What of a rule's missing or failing records the task settles.</summary>
    private static (string? Subject, int More, bool IsAwaited) Settles(PlanTask task, HashSet<string> subjects, RuleJudgement rule)
    {
        var isNamed = task.SettlesRules.Contains(rule.Name);
        foreach (var finding in rule.Findings.Where(finding => finding.Decides || rule.Answer == RuleAnswer.NotKnown))
        {
            foreach (var missing in finding.Missing)
            {
                if (isNamed || subjects.Contains(NameFolding.Fold(missing.Subject)))
                {
                    return (missing.Subject, missing.Needed, missing.Reason == MissingReason.ResultPending);
                }
            }

            if (finding.Remedy is { Kind: RemedyKind.NewResult or RemedyKind.NewEvent } remedy
                && remedy.Subjects.FirstOrDefault(subject => isNamed || subjects.Contains(NameFolding.Fold(subject))) is { } turned)
            {
                return (turned, 0, false);
            }
        }

        return (null, 0, false);
    }
}

/// <summary>Why an animal needs a task.</summary>
public enum Need
{
    /// <summary>Nothing is on record.</summary>
    Missing,

    /// <summary>What is on record has lapsed by the judging days.</summary>
    Lapses,

    /// <summary>What is on record fails: a new result or event would turn it.</summary>
    Fails,

    /// <summary>She may be used, and everyone who may be needs it.</summary>
    OnTheList,
}
