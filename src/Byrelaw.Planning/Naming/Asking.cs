using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Planning.FindingOut;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.Naming;

/// <summary>
/// The two checks and what a method suits, asked of one animal after the other: she may carry on the days of transfer, she may be treated on day 0, the method suits
/// her on day 0. No doubt is ever passed over: what is not known makes nobody sure, and she is to be asked about only where it is proved that finding it out makes her so.
/// </summary>
internal sealed class Asking
{
    private readonly JudgedSession _session;
    private readonly Gates _gates;
    private readonly ImmutableArray<SupposedRow> _besides;
    private readonly Dictionary<int, Answer>? _treated;
    private readonly Lazy<Dictionary<int, AnimalJudgement>> _explained;
    private readonly Truth[]? _suited;
    private readonly Ways _ways;

    /// <param name="session">The session.</param>
    /// <param name="gates">What must hold: the recipients' list on the days of transfer first, then, where something is given, the list for treatment on day 0.</param>
    /// <param name="today">The day of planning.</param>
    /// <param name="besides">What is supposed whatever is asked.</param>
    public Asking(JudgedSession session, Gates gates, LocalDate today, params ImmutableArray<SupposedRow> besides)
    {
        _besides = besides;
        (_session, _gates) = (session, gates);
        _ways = new Ways(session.Rulebook, session.Judge.Herd, [.. gates.Lists.Select(gate => gate.Choice.List)], today, gates.By, gates.Lists.Max(gate => Period.DaysBetween(gate.From, gate.To)));
        if (gates.Lists is [_, var treatment])
        {
            var (animals, answers) = session.Judge.Answers(treatment.Choice, treatment.From, treatment.To);
            _treated = animals.Zip(answers).ToDictionary(pair => pair.First, pair => pair.Second);
        }

        // Why an answer is not known is worked out only where somebody is asked about.
        _explained = new(() => session.Judge.JudgeList(gates.Lists[1].Choice, gates.Lists[1].From, gates.Lists[1].To).Animals.ToDictionary(animal => animal.Animal));
        _suited = gates.Suits is null ? null : session.Judge.TruthsOn(gates.Suits, gates.On);
    }

    /// <summary>How every animal of the recipients' list stands.</summary>
    public Dictionary<int, StandingOf> Of(IEnumerable<AnimalJudgement> carrying)
    {
        var standings = new Dictionary<int, StandingOf>();
        var open = new List<OpenAnimal>();
        foreach (var animal in carrying)
        {
            var standing = standings[animal.Animal] = AsItIs(animal);
            if (standing.Standing == Standing.ToAsk)
            {
                open.Add(new OpenAnimal(animal.Animal, [.. Carrying(animal), .. Treatment(animal.Animal), .. Suits(animal.Animal)]));
            }
        }

        if (open.Count == 0)
        {
            return standings;
        }

        var prover = new Prover(_session.Rulebook, _session.Judge.Herd, _besides);
        var proved = prover.Prove(_gates, open);
        var late = prover.CountsFrom(_gates, [.. open.Where(one => !proved.ContainsKey(one.Animal))]);
        foreach (var one in open)
        {
            standings[one.Animal] = proved.TryGetValue(one.Animal, out var proof)
                ? standings[one.Animal] with { Missing = proof.Records.Length, Proof = proof }
                : new StandingOf(Standing.Out, FailedCheck.NotKnownInTime) { Closed = late.GetValueOrDefault(one.Animal) };
        }

        return standings;
    }

    /// <summary>How one stands as far as it is known: to be asked about where nothing bars her and something is not known.</summary>
    public StandingOf AsItIs(AnimalJudgement carrying)
    {
        var treated = _treated is null ? Answer.Ready : _treated.GetValueOrDefault(carrying.Animal, Answer.No);
        var suited = _suited?[carrying.Animal] ?? Truth.True;
        return IsBarred(carrying.Answer) ? new(Standing.Out, FailedCheck.Carrying)
            : IsBarred(treated) ? new(Standing.Out, FailedCheck.Treatment)
            : suited == Truth.False ? new(Standing.Out, FailedCheck.Suits)
            : carrying.Answer == Answer.Ask ? new(Standing.ToAsk, FailedCheck.Carrying)
            : treated == Answer.Ask ? new(Standing.ToAsk, FailedCheck.Treatment)
            : suited == Truth.Unknown ? new(Standing.ToAsk, FailedCheck.Suits)
            : new(Standing.Sure, FailedCheck.None);
    }

    private static bool IsBarred(Answer answer) => answer is Answer.No or Answer.Later;

    private IEnumerable<OpenRule> Carrying(AnimalJudgement carrying) => carrying.Answer == Answer.Ask ? Open(carrying, 0) : [];

    private IEnumerable<OpenRule> Treatment(int animal) => _treated is not null && _treated.GetValueOrDefault(animal, Answer.No) == Answer.Ask ? Open(_explained.Value[animal], 1) : [];

    private IEnumerable<OpenRule> Suits(int animal) => _suited is not null && _suited[animal] == Truth.Unknown
        ? [OpenBy(-1, "", _session.Judge.FindingsOf(_gates.Suits!, animal, _gates.On), animal)] : [];

    // Whether she is in the herd, and what sort she is, no record of what happens to her settles: such a rule has no way.
    private IEnumerable<OpenRule> Open(AnimalJudgement animal, int gate) => animal.Rules.Where(rule => rule.InTheWay)
        .Select(rule => rule.Answer == RuleAnswer.NotKnown && rule.Gate == Gate.None ? OpenBy(gate, rule.Name, rule.Findings, animal.Animal) : new OpenRule(gate, rule.Name, []));

    private OpenRule OpenBy(int gate, string name, IEnumerable<Finding> findings, int animal)
    {
        var (open, closed) = _ways.Of(name, findings, animal);
        return new OpenRule(gate, name, open) { Closed = closed };
    }
}
