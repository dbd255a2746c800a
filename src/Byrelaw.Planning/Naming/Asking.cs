using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Naming;

/// <summary>
/// The two checks and what a method suits, asked of one animal after the other: she may carry on the days of transfer, she may be treated on day 0, the method suits
/// her on day 0. No doubt is ever passed over: what is not known makes nobody sure.
/// </summary>
internal sealed class Asking
{
    private readonly JudgedSession _session;
    private readonly Condition? _suits;
    private readonly Choice? _treatment;
    private readonly LocalDate _day;
    private readonly LocalDate _by;
    private readonly LocalDate _today;
    private readonly Dictionary<int, Answer>? _treated;
    private readonly Lazy<Dictionary<int, AnimalJudgement>> _explained;
    private readonly Truth[]? _suited;

    /// <param name="session">The session.</param>
    /// <param name="suits">Whom the method suits; null for everyone.</param>
    /// <param name="treatment">Who may be treated; null where nothing is given.</param>
    /// <param name="day">Day 0.</param>
    /// <param name="by">By then what is not known must be in hand.</param>
    /// <param name="today">The day of planning.</param>
    public Asking(JudgedSession session, Condition? suits, Choice? treatment, LocalDate day, LocalDate by, LocalDate today)
    {
        (_session, _suits, _treatment, _day, _by, _today) = (session, suits, treatment, day, by, today);
        if (treatment is not null)
        {
            var (animals, answers) = session.Judge.Answers(treatment, day, day);
            _treated = animals.Zip(answers).ToDictionary(pair => pair.First, pair => pair.Second);
        }

        // Why an answer is not known is worked out only where somebody is asked about.
        _explained = new(() => session.Judge.JudgeList(treatment!, day, day).Animals.ToDictionary(animal => animal.Animal));
        _suited = suits is null ? null : session.Judge.TruthsOn(suits, day);
    }

    /// <summary>How an animal of the recipients' list stands.</summary>
    public StandingOf Of(AnimalJudgement carrying)
    {
        var treated = _treated is null ? Answer.Ready : _treated.GetValueOrDefault(carrying.Animal, Answer.No);
        var suited = _suited?[carrying.Animal] ?? Truth.True;
        if (IsBarred(carrying.Answer))
        {
            return new(Standing.Out, FailedCheck.Carrying);
        }

        if (IsBarred(treated))
        {
            return new(Standing.Out, FailedCheck.Treatment);
        }

        if (suited == Truth.False)
        {
            return new(Standing.Out, FailedCheck.Suits);
        }

        if (carrying.Answer.MayBeUsed() && treated.MayBeUsed() && suited == Truth.True)
        {
            return new(Standing.Sure, FailedCheck.None);
        }

        return ToAsk(carrying, treated, suited);
    }

    private static bool IsBarred(Answer answer) => answer is Answer.No or Answer.Later;

    private StandingOf ToAsk(AnimalJudgement carrying, Answer treated, Truth suited)
    {
        var missing = new HashSet<string>(StringComparer.Ordinal);
        var tasks = _session.Rulebook.Plans.Tasks;
        var inTime = true;
        var check = carrying.Answer == Answer.Ask ? FailedCheck.Carrying : treated == Answer.Ask ? FailedCheck.Treatment : FailedCheck.Suits;
        if (carrying.Answer == Answer.Ask)
        {
            inTime &= FoundOut.InTime(carrying, _today, _by, ProgrammeLists.Recipients(_session.Programme)!.List, tasks);
            missing.UnionWith(carrying.Settle.Select(one => one.What));
        }

        if (treated == Answer.Ask)
        {
            var judged = _explained.Value[carrying.Animal];
            inTime &= FoundOut.InTime(judged, _today, _by, _treatment!.List, tasks);
            missing.UnionWith(judged.Settle.Select(one => one.What));
        }

        if (suited == Truth.Unknown)
        {
            var lacking = _session.Judge.MissingFor(_suits!, carrying.Animal, _day);
            inTime &= FoundOut.InTime(lacking, _today, _by, "", tasks);
            missing.UnionWith(lacking.Select(one => one.What));
        }

        return inTime ? new(Standing.ToAsk, check, missing.Count) : new(Standing.Out, FailedCheck.NotKnownInTime);
    }
}
