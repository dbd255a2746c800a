namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Judges plain rows day by day, as the language reference reads. Slow on purpose.</summary>
public sealed class ReferenceJudge
{
    private readonly Rulebook _rulebook;
    private readonly LocalDate? _on;
    private IReadOnlyList<(string Name, Func<Moment, RuleOnADay> On)>? _floor;

    /// <param name="rulebook">As read on <paramref name="knownOn"/>: "agreements after D do not exist".</param>
    /// <param name="farm">All rows.</param>
    /// <param name="knownOn">"Rows entered after D are not seen."</param>
    /// <param name="on">Judged on this day instead of each list's own days.</param>
    public ReferenceJudge(Rulebook rulebook, PlainFarm farm, LocalDate? knownOn = null, LocalDate? on = null)
    {
        _rulebook = rulebook;
        _on = on;
        var days = on is { } day ? [day] : rulebook.Programme!.Choices.SelectMany(choice => new[] { choice.JudgedFrom, choice.JudgedTo });
        Knowledge = new Knowledge(rulebook, farm, knownOn, days);
    }

    public Knowledge Knowledge { get; }

    /// <summary>What each rule of the floor says of an animal on each day from one to another.</summary>
    public IEnumerable<JudgedRule> FloorOf(int animal, LocalDate first, LocalDate last) => Floor(animal, DayNumber.Of(first), DayNumber.Of(last));

    /// <summary>Every animal of a list, in the order of <c>animals.csv</c>.</summary>
    public IReadOnlyList<JudgedAnimal> Judge(Choice choice) => [.. Takes(choice).Select(animal => Judge(choice, animal))];

    /// <summary>All that a list asks of an animal over its judging days, whether or not it takes her: Ready or On course where that is true.</summary>
    public Truth Over(Choice choice, int animal)
    {
        var (from, to) = JudgingDays(choice);
        return Kleene.All(All(Rules(choice, animal, from, to).Where(rule => rule.Counts).Select(rule => rule.Days), from, to).Between(from, to));
    }

    /// <summary>One animal, whether or not the list takes her.</summary>
    public JudgedAnimal Judge(Choice choice, int animal)
    {
        var (from, to) = JudgingDays(choice);
        var first = new[] { Knowledge.Farm.Known, from }.Concat(_rulebook.Programme!.Dates.Select(date => DayNumber.Of(date.Date))).Min();
        // "The span runs from the earlier of the known day and the programme's first date to J + 1 year."
        var last = DayNumber.Of(DayNumber.Date(to).PlusYears(1));
        var rules = Rules(choice, animal, first, last);
        var all = All(rules.Where(rule => rule.Counts).Select(rule => rule.Days), first, last);
        var strict = All(rules.Where(rule => rule.Counts).Select(rule => rule.StrictDays), first, last);
        var answer = AnswerReference.Of(rules, all, strict, from, to);
        var prefers = Prefers(choice, animal, from);
        var (readyFrom, readyUntil) = ReadyStretch(answer, all, from);
        return new JudgedAnimal
        {
            Animal = animal,
            Number = Knowledge.Farm.Animals[animal].Number,
            Sort = SortReference.Of(Knowledge, new Moment(animal, from, false)),
            Answer = answer,
            Judged = (from, to),
            Rules = rules,
            All = all,
            AllStrict = strict,
            ReadyFrom = readyFrom,
            ReadyUntil = readyUntil,
            TooLate = new[] { answer.LaterFrom, answer.NotBefore }.Min() > LastTransfer,
            InCalf = InCalfOver(animal, from, to),
            Prefers = [.. prefers.Select(prefer => (prefer.Prefer.Name, prefer.Truth))],
            Score = prefers.Where(prefer => prefer.Truth == Truth.True).Sum(prefer => prefer.Prefer.Counts),
        };
    }

    /// <summary>"From the day after the last session's transfers on, t or u reads 'too late for this programme'."</summary>
    private int? LastTransfer => _rulebook.Programme!.Date("final transfer") is not { } final ? null
        : DayNumber.Of(final) + (_rulebook.Programme.Aims.Collections is { Length: > 1 } collections ? DayNumber.Of(collections[^1]) - DayNumber.Of(collections[0]) : 0);

    private (int From, int To) JudgingDays(Choice choice) =>
        _on is { } day ? (DayNumber.Of(day), DayNumber.Of(day)) : (DayNumber.Of(choice.JudgedFrom), DayNumber.Of(choice.JudgedTo));

    /// <summary>
    /// "<c>from females | cows | heifers | NAMES | another list</c> takes the animals present on the judging day (sex blank: not
    /// known)": those surely out or surely of another sort are not on the list; doubtful ones are, and are asked about.
    /// </summary>
    private IEnumerable<int> Takes(Choice choice)
    {
        var (from, to) = JudgingDays(choice);
        return choice.From switch
        {
            ChoiceFrom.Named => Knowledge.Farm.Animals.Where(animal => choice.Animals.Contains(animal.Number)).Select(animal => animal.Index),
            ChoiceFrom.AnotherList => Takes(_rulebook.Programme!.Choices.First(other => other.List == choice.OtherList)),
            _ => Knowledge.Farm.Animals.Select(animal => animal.Index).Where(animal =>
                Gates(choice).All(gate => Enumerable.Range(from, to - from + 1).All(day => gate.On(new Moment(animal, day, false)) != Truth.False))),
        };
    }

    /// <summary>"A list's implicit gates come before its rules: in the herd, and of the right sort (female; cow; heifer)."</summary>
    private IReadOnlyList<(string Name, Gate Gate, Func<Moment, Truth> On)> Gates(Choice choice) =>
    [
        ("In the herd", Gate.InTheHerd, moment => Knowledge.Farm.Presence.At(moment.Animal, moment.Day)),
        SortOf(choice) switch
        {
            ChoiceFrom.Cows => ("Cow", Gate.OfTheRightSort, moment => SortReference.Cow(Knowledge, moment)),
            ChoiceFrom.Heifers => ("Heifer", Gate.OfTheRightSort, moment => SortReference.Heifer(Knowledge, moment)),
            _ => ("Female", Gate.OfTheRightSort, moment => SortReference.Female(Knowledge, moment)),
        },
    ];

    /// <summary>A list drawn from another takes the other's sort: whoever is on that one only in doubt is no surer here.</summary>
    private ChoiceFrom SortOf(Choice choice) => choice.From == ChoiceFrom.AnotherList
        ? SortOf(_rulebook.Programme!.Choices.First(other => other.List == choice.OtherList))
        : choice.From;

    private IReadOnlyList<JudgedRule> Rules(Choice choice, int animal, int first, int last)
    {
        var gates = Gates(choice).Select(gate => new JudgedRule
        {
            Name = gate.Name,
            Gate = gate.Gate,
            Days = ByDay.Over(first, last, day => new RuleOnADay(gate.On(new Moment(animal, day, false)), Truth.True)),
            StrictDays = ByDay.Over(first, last, day => new RuleOnADay(gate.On(new Moment(animal, day, true)), Truth.True)),
        });
        var rules = _rulebook.Rules.Where(rule => rule.IsFor(choice.List)).Select(rule => Judged(rule, choice, animal, first, last));
        var unreadable = _rulebook.BrokenParts.Where(part => part.List is null || part.List == choice.List).Select(part => new JudgedRule
        {
            Name = "",
            IsBroken = true,
            Days = ByDay.Over(first, last, _ => new RuleOnADay(Truth.Unknown, Truth.True)),
            StrictDays = ByDay.Over(first, last, _ => new RuleOnADay(Truth.Unknown, Truth.True)),
        });
        return [.. gates, .. rules, .. choice.HasFloor ? Floor(animal, first, last) : [], .. unreadable];
    }

    /// <summary>Like any safety rule, and on every list: it holds on the day that the records reach too.</summary>
    private IEnumerable<JudgedRule> Floor(int animal, int first, int last)
    {
        var known = Knowledge.Farm.Known;
        return (_floor ??= FloorReference.Rules(Knowledge)).Select(rule => new JudgedRule
        {
            Name = rule.Name,
            IsOfTheFloor = true,
            Days = AlsoOn(known, ByDay.Over(first, last, day => rule.On(new Moment(animal, day, false))), () => rule.On(new Moment(animal, known, false))),
            StrictDays = AlsoOn(known, ByDay.Over(first, last, day => rule.On(new Moment(animal, day, true))), () => rule.On(new Moment(animal, known, true))),
        });
    }

    /// <summary>"*Take her as in calf* stands on her line, whatever the answer and on every list, where a rule of the floor is false on a day judged;
    /// *May be in calf* where none is false and one is not known."</summary>
    private InCalf InCalfOver(int animal, int from, int to)
    {
        var all = Kleene.All(Floor(animal, from, to).SelectMany(rule => rule.Days.Values).Select(day => day.Truth));
        return all == Truth.False ? InCalf.TakeAsInCalf : all == Truth.Unknown ? InCalf.MayBe : InCalf.NotTold;
    }

    /// <summary>
    /// "On every list but those for looking only, a safety rule must hold on each day judged, and on the day that the records reach where that is
    /// later: what has come to light since was so then."
    /// </summary>
    private JudgedRule Judged(Rule rule, Choice choice, int animal, int first, int last)
    {
        var known = Knowledge.Farm.Known;
        var alsoOnKnown = rule.IsSafety && choice.Use != ListUse.ForLookingOnly;
        var (days, strictDays) = (Alone(strict: false), Alone(strict: true));
        return new JudgedRule
        {
            Name = rule.Name,
            Rule = rule,
            IsBroken = Broken.Is(rule, _rulebook),
            Days = alsoOnKnown ? AlsoOn(known, days, () => On(known, strict: false)) : days,
            StrictDays = alsoOnKnown ? AlsoOn(known, strictDays, () => On(known, strict: true)) : strictDays,
            AlsoOn = alsoOnKnown ? known : null,
            Alone = days,
        };

        RuleOnADay On(int day, bool strict) => RuleReference.On(rule, Knowledge, new Moment(animal, day, strict));

        ByDay<RuleOnADay> Alone(bool strict) => ByDay.Over(first, last, day => On(day, strict));
    }

    /// <summary>What is said of each day, and on the days before the known day what is said of that one too.</summary>
    private static ByDay<RuleOnADay> AlsoOn(int known, ByDay<RuleOnADay> days, Func<RuleOnADay> onKnown)
    {
        if (days.First >= known)
        {
            return days;
        }

        var now = onKnown();
        return ByDay.Over(days.First, days.Last, day => day < known ? And(days.On(day), now) : days.On(day));
    }

    private static RuleOnADay And(RuleOnADay then, RuleOnADay now) =>
        new(Kleene.And(then.Truth, now.Truth), Kleene.Or(then.Applies, now.Applies));

    private static ByDay<Truth> All(IEnumerable<ByDay<RuleOnADay>> rules, int first, int last)
    {
        var counted = rules.ToList();
        return ByDay.Over(first, last, day => Kleene.All(counted.Select(rule => rule.On(day).Truth)));
    }

    /// <summary>The stretch with the judging days, or for Later the first later one.</summary>
    private static (int? From, int? Until) ReadyStretch(AnswerWithDates answer, ByDay<Truth> all, int judged)
    {
        if (answer.Answer is not (Answer.Ready or Answer.OnCourse) && answer.LaterFrom is null)
        {
            return (null, null);
        }

        var from = answer.LaterFrom ?? judged;
        var until = from;
        while (from > all.First && all.On(from - 1) == Truth.True)
        {
            from--;
        }

        while (until < all.Last && all.On(until + 1) == Truth.True)
        {
            until++;
        }

        return (from, until == all.Last ? null : until);
    }

    /// <summary>"<c>prefer</c> ranks those who may be used and never excludes: counts only where true on the judging day."</summary>
    private ImmutableArray<(Prefer Prefer, Truth Truth)> Prefers(Choice choice, int animal, int day) =>
        [.. _rulebook.Prefers.Where(prefer => prefer.List == choice.List).Select(prefer => (prefer,
            prefer.IsBroken || Broken.Is(prefer.Condition, _rulebook)
                ? Truth.Unknown
                : ConditionReference.At(prefer.Condition, Knowledge, new Moment(animal, day, false))))];
}
