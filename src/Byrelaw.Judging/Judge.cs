using System.Collections.Concurrent;
using Byrelaw.Language.Floors;

namespace Byrelaw.Judging;

/// <summary>Judges herd records against a rulebook.</summary>
public sealed class Judge
{
    private readonly Rulebook _rulebook;
    private readonly Programme _programme;
    private readonly LocalDate? _knownOn;
    private readonly HerdDays _days;
    private readonly ConcurrentDictionary<string, Lazy<FloorCover>> _covers = new(StringComparer.Ordinal);

    /// <summary>What the criteria ask of days.</summary>
    internal HerdDays Days => _days;

    /// <summary>The herd that is judged.</summary>
    public Herd Herd => _days.Herd;

    /// <summary>Prepares a rulebook (which must have a programme) and a herd for judging.</summary>
    /// <param name="rulebook">Its vocabulary must be the herd's; read as known on <paramref name="knownOn"/>.</param>
    /// <param name="herd">The records, read as known on <paramref name="knownOn"/> too.</param>
    /// <param name="knownOn">The day whose knowledge this is; null for today's. It is only passed on to the draft.</param>
    /// <exception cref="ArgumentException">There is no programme, or the herd was read with other words.</exception>
    public Judge(Rulebook rulebook, Herd herd, LocalDate? knownOn = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        if (!ReferenceEquals(rulebook.Vocabulary, herd.Vocabulary))
        {
            throw new ArgumentException("The herd was read with another vocabulary than the rulebook's.", nameof(herd));
        }

        _rulebook = rulebook;
        _programme = rulebook.Programme ?? throw new ArgumentException("The rulebook has no programme.", nameof(rulebook));
        _knownOn = knownOn;
        _days = new HerdDays(herd);
    }

    /// <summary>Judges every animal of every list.</summary>
    /// <param name="on">Judge on this day instead of each list's own days.</param>
    /// <param name="progress">Told how many animals are done, of how many.</param>
    public Draft JudgeAll(LocalDate? on = null, IProgress<(int Done, int Of)>? progress = null)
    {
        var lists = ImmutableArray.CreateBuilder<ListJudgement>(_programme.Choices.Length);
        var choices = _programme.Choices.Select(choice => JudgingDays.On(choice, on)).ToList();
        var candidates = choices.Select(choice => CandidatesOf(choice, on)).ToList();
        var done = 0;
        var all = candidates.Sum(list => list.Animals.Length);
        for (var i = 0; i < choices.Count; i++)
        {
            lists.Add(JudgeList(choices[i], candidates[i], () =>
            {
                var now = Interlocked.Increment(ref done);
                progress?.Report((now, all));
            }));
        }

        return new Draft(_rulebook, _days.Herd, _knownOn, OnSeveralLists.Mark(lists.ToImmutable()));
    }

    /// <summary>How many animals all lists of the programme have.</summary>
    public int CountAll(LocalDate? on = null) => _programme.Choices.Sum(choice => CandidatesOf(JudgingDays.On(choice, on), on).Animals.Length);

    /// <summary>Judges every animal of one list of the programme; whether she may be used on another too is not marked.</summary>
    public ListJudgement JudgeList(Choice choice) => JudgeList(choice, CandidatesOf(choice, null), () => { });

    /// <summary>Judges one animal on one list, whether or not the list takes her.</summary>
    public AnimalJudgement JudgeOne(Choice choice, int animal, LocalDate? on = null) =>
        ExplainerOf(JudgingDays.On(choice, on)).Explain(animal);

    /// <summary>Judges one animal on every list that may take her; on all lists where none may.</summary>
    public Draft JudgeHer(int animal, LocalDate? on = null)
    {
        var number = _days.Herd.Numbers[animal];
        var hers = _programme.Choices.Where(choice => Candidates.MayTake(choice, number, _programme)).ToList();
        var lists = (hers.Count > 0 ? hers : [.. _programme.Choices]).Select(choice =>
            new ListJudgement(JudgingDays.On(choice, on), [.. PlanOf(choice).BrokenParts], [JudgeOne(choice, animal, on)], []));
        return new Draft(_rulebook, _days.Herd, _knownOn, [.. lists]);
    }

    /// <summary>Only the answers of a list's animals, for when no one asks why. The order is the herd's.</summary>
    /// <param name="choice">The list.</param>
    /// <param name="on">Judge on this day instead of the list's own.</param>
    /// <param name="threads">At most so many at once; 0 for as many as the machine has.</param>
    public (int[] Animals, Answer[] Answers) Answers(Choice choice, LocalDate? on = null, int threads = 0)
    {
        choice = JudgingDays.On(choice, on);
        var animals = CandidatesOf(choice, on).Animals;
        var answers = new Answer[animals.Length];
        Divided(animals.Length, (from, to) =>
        {
            var concluder = new Concluder(PlanOf(choice), DaysOf(choice));
            for (var i = from; i < to; i++)
            {
                answers[i] = concluder.Conclude(animals[i]).Answer;
            }
        }, threads);
        return (animals, answers);
    }

    /// <summary>Only the answers of a list's animals on some days in a row, such as those of one session.</summary>
    /// <param name="choice">The list.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day; not before the first.</param>
    /// <exception cref="ArgumentException">The last day is before the first.</exception>
    public (int[] Animals, Answer[] Answers) Answers(Choice choice, LocalDate from, LocalDate to) => Answers(Over(choice, from, to));

    /// <summary>Judges every animal of one list on some days in a row, such as those of one session.</summary>
    /// <exception cref="ArgumentException">The last day is before the first.</exception>
    public ListJudgement JudgeList(Choice choice, LocalDate from, LocalDate to) => JudgeList(Over(choice, from, to));

    private static Choice Over(Choice choice, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return from <= to ? choice with { JudgedFrom = from, JudgedTo = to, FromDate = null, ToDate = null } : throw new ArgumentException("The last day is before the first.", nameof(to));
    }

    /// <summary>What the floor says of each animal of a list on one day, whatever the list itself says of her.</summary>
    public (int[] Animals, InCalf[] Said) InCalfOn(Choice choice, LocalDate date)
    {
        choice = JudgingDays.On(choice, date);
        var animals = CandidatesOf(choice, date).Animals;
        var (plan, rules) = (PlanOf(choice), new RuleExplainer(PlanOf(choice), DaysOf(choice)));
        return (animals, [.. animals.Select(animal => plan.Floor.Of(rule => rules.TruthOf(rule, animal)))]);
    }

    /// <summary>What each rule of a list says on one day, for every animal of the herd, on one thread.</summary>
    /// <returns>For each gate and rule that is judged, in the order of the files, one truth an animal.</returns>
    public Truth[][] TruthsOn(Choice choice, LocalDate date)
    {
        var plan = PlanOf(choice);
        var day = Day.Number(date);
        var answers = new Kleene[_days.Herd.Count];
        var truths = new Truth[plan.Judged.Length][];
        for (var rule = 0; rule < truths.Length; rule++)
        {
            plan.Judged[rule].OnAll(day, answers);
            var own = truths[rule] = new Truth[answers.Length];
            for (var animal = 0; animal < own.Length; animal++)
            {
                own[animal] = answers[animal].Assumed;
            }
        }

        return truths;
    }

    /// <summary>What a condition that is no rule's says on one day, such as whom a method suits, for every animal of the herd.</summary>
    public Truth[] TruthsOn(Condition condition, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(condition);
        var answers = new Kleene[_days.Herd.Count];
        new CriterionCompiler(_days, _rulebook).Compile(condition).OnAll(Day.Number(date), answers);
        return [.. answers.Select(answer => answer.Assumed)];
    }

    /// <summary>What such a condition finds of one animal on one day, as far as it decides: what is missing, where it is not known.</summary>
    public ImmutableArray<Finding> FindingsOf(Condition condition, int animal, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(condition);
        var (notes, until) = (new Notes(_days, animal), int.MaxValue);
        new CriterionCompiler(_days, _rulebook).Compile(condition).On(animal, Day.Number(date), ref until, notes);
        return [.. notes.Findings.Where(finding => finding.Decides)];
    }

    /// <summary>A list's rules, to be asked of one animal after the other.</summary>
    public ListChecks ChecksOf(Choice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return new ListChecks(PlanOf(choice));
    }

    /// <summary>How many of a list's animals each of its rules lets in on one day; nothing of a rule that is judged on the day itself.</summary>
    public ImmutableArray<RuleTally> Tally(Choice choice, LocalDate date)
    {
        var animals = CandidatesOf(JudgingDays.On(choice, date), date).Animals;
        var answers = new Kleene[_days.Herd.Count];
        var tallies = ImmutableArray.CreateBuilder<RuleTally>();
        foreach (var rule in PlanOf(choice).Rules.Where(rule => ListPlan.IsJudged(rule.Rule)))
        {
            rule.OnAll(Day.Number(date), answers);
            var (met, notMet) = (0, 0);
            foreach (var animal in animals)
            {
                met += answers[animal].Assumed == Truth.True ? 1 : 0;
                notMet += answers[animal].Assumed == Truth.False ? 1 : 0;
            }

            tallies.Add(new RuleTally(rule.Rule, met, notMet, animals.Length - met - notMet));
        }

        return tallies.ToImmutable();
    }

    /// <summary>Works out the timeline of all rules together for every animal of the herd, on one thread.</summary>
    /// <returns>How many stretches there are in all of them.</returns>
    internal int TraceAll(Choice choice)
    {
        var plan = PlanOf(choice);
        var days = DaysOf(choice);
        var line = new DayTimeline();
        var stretches = 0;
        for (var animal = 0; animal < _days.Herd.Count; animal++)
        {
            line.Trace(plan.All, animal, days.SpanFirst, days.SpanLast);
            stretches += line.Count;
        }

        return stretches;
    }

    private ListJudgement JudgeList(Choice choice, (int[] Animals, List<string> Unknown) candidates, Action done) => new(
        choice, [.. PlanOf(choice).BrokenParts], Ranking.Rank(InParallel(choice, candidates.Animals, done)), [.. candidates.Unknown]);

    private ImmutableArray<AnimalJudgement> InParallel(Choice choice, int[] animals, Action done)
    {
        var explained = new AnimalJudgement[animals.Length];
        Divided(animals.Length, (from, to) =>
        {
            var explainer = ExplainerOf(choice);
            for (var i = from; i < to; i++)
            {
                explained[i] = explainer.Explain(animals[i]);
                done();
            }
        });
        return [.. explained];
    }

    /// <summary>Plans remember things, so each thread makes its own and takes a run of neighbours.</summary>
    internal static void Divided(int count, Action<int, int> work, int threads = 0)
    {
        const int Fewest = 500;
        var parts = Math.Clamp(count / Fewest, 1, threads > 0 ? threads : Environment.ProcessorCount);
        if (parts == 1)
        {
            work(0, count);
            return;
        }

        Parallel.For(0, parts, part => work((int)((long)count * part / parts), (int)((long)count * (part + 1) / parts)));
    }

    /// <summary>The animals of a list, and the numbers named that are not in the records.</summary>
    internal (int[] Animals, List<string> Unknown) CandidatesOf(Choice choice, LocalDate? on) =>
        Candidates.Find(PlanOf(choice), choice, DaysOf(choice), other =>
        {
            var source = _programme.Choices.First(candidate => candidate.List == other);
            return CandidatesOf(JudgingDays.On(source, on), on).Animals;
        });

    /// <summary>A list's rules, for one thread.</summary>
    internal ListPlan PlanOf(Choice choice) => new(_days, _rulebook, choice, _covers.GetOrAdd(choice.List, list => new Lazy<FloorCover>(() => new FloorCover(_rulebook, list))));

    /// <summary>The days a list is judged on.</summary>
    internal JudgingDays DaysOf(Choice choice) => JudgingDays.Of(choice, _programme, _days.KnownDay);

    private AnimalExplainer ExplainerOf(Choice choice) => new(PlanOf(choice), DaysOf(choice), _programme.LastTransfer);
}
