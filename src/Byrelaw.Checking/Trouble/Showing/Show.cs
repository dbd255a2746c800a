namespace Byrelaw.Checking.Trouble.Showing;

/// <summary>
/// Shows a trouble on a made-up animal where one can show it. The judge is asked of each; what he does not bear out is not
/// shown, and a trouble that he contradicts is none.
/// </summary>
internal sealed class Show
{
    // Making herds takes time, and nobody reads so many.
    private const int Most = 12;
    private static readonly LocalDate SomeDay = new(2026, 10, 19);

    private readonly Study _study;
    private readonly LocalDate _day;
    private readonly AnimalMaker _maker;
    private int _shown;

    public Show(Study study)
    {
        _study = study;
        _day = study.Rulebook.Programme?.Choices is [var first, ..] ? first.JudgedFrom : SomeDay;
        _maker = new AnimalMaker(study.Rulebook.Vocabulary, study.Maker.Quantities, _day);
    }

    /// <summary>Two rules that no animal can meet: one that meets the one and fails the other.</summary>
    public Diagnostic? NeverTogether(Diagnostic problem, RuleFormulas first, RuleFormulas second) => With(
        problem,
        Made((first.Applies, true), (second.Applies, true), (first.Needs, true), (second.Needs, false)),
        [first.Rule, second.Rule],
        [Truth.True, Truth.False],
        $"\"{first.Rule.Name}\" met, \"{second.Rule.Name}\" not met",
        [Truth.True, Truth.True]);

    /// <summary>A rule that another implies: an animal that only the other keeps out.</summary>
    public Diagnostic? Implied(Diagnostic problem, RuleFormulas rule, RuleFormulas by) => With(
        problem,
        Made((by.Met, false), (rule.Met, true)),
        [rule.Rule, by.Rule],
        [Truth.True, Truth.False],
        $"\"{rule.Rule.Name}\" met, only \"{by.Rule.Name}\" keeps her out",
        [Truth.False, Truth.True]);

    /// <summary>Conditions that exclude each other: an animal that fails only one of them.</summary>
    public Diagnostic? NeverMet(Diagnostic problem, ListCondition list)
    {
        for (var i = list.Items.Length - 1; i >= 0 && list.Kind == ListKind.AllOf; i--)
        {
            var asked = list.Items.Select((item, place) => (_study.Maker.Make(item), place != i)).ToArray();
            if (Made(asked) is { } made)
            {
                return With(problem, made, [Asking(list)], [Truth.False], $"only {Quoted.Of(list.Items[i].Span)} is not true of her", [Truth.True]);
            }
        }

        return problem;
    }

    /// <summary>A rule that lets pass what is not known: an animal of whom nothing is.</summary>
    public Diagnostic? PassesNotKnown(Diagnostic problem, Rule rule) => With(
        problem,
        new MadeUpHerd([Grown(rule.Audience == Audience.Heifers ? "0" : "2")], [], _day) { NotKept = _study.Rulebook.Vocabulary.Kinds },
        [rule], [Truth.True], $"\"{rule.Name}\" met", [Truth.False]);

    /// <summary>A test that counts from the very day.</summary>
    public Diagnostic? TestsEarly(Diagnostic problem, TestCondition test, SinceLast since)
    {
        var answer = test.Test.Answers.Where((_, place) => test.Answers.Contains(place) != test.IsNot).FirstOrDefault();
        var yesterday = _day.PlusDays(-1);
        var grown = Grown(since.Kinds[0].Id == _study.Rulebook.Vocabulary.Calving?.Id ? "2" : "");
        return answer is null ? problem : With(
            problem,
            new MadeUpHerd([grown], [new MadeUpRow(yesterday, grown.Number, since.Kinds[0].Name), new MadeUpRow(yesterday, grown.Number, test.Test.Name, answer)], _day),
            [Asking(test)], [Truth.True], "true already", []);
    }

    private MadeUpAnimal Grown(string parity) => new("1")
    {
        Born = NodaTime.Text.LocalDatePattern.Iso.Format(_day.PlusYears(-5)),
        Facts = parity.Length == 0 ? ImmutableDictionary<string, string>.Empty : ImmutableDictionary<string, string>.Empty.Add("parity", parity),
    };

    private static Rule Asking(Condition condition) => new() { Name = "asked", List = "asked", Needs = condition, Span = condition.Span };

    private MadeUpHerd? Made(params (Formula Formula, bool Holds)[] asked) => _shown < Most && _study.CanBe(asked) ? _maker.Make(_study.Search.Found) : null;

    private Diagnostic? With(Diagnostic problem, MadeUpHerd? made, Rule[] rules, Truth[] expected, string judged, Truth[] contradicting)
    {
        if (made is null || _shown >= Most || AnimalTrial.Run(_study.Rulebook, made, _day, rules) is not { } truths)
        {
            return problem;
        }

        if (truths.SequenceEqual(contradicting) && rules.All(rule => rule.Audience == Audience.Everyone))
        {
            return null;
        }

        if (!truths.SequenceEqual(expected))
        {
            return problem;
        }

        _shown++;
        return problem with { Shown = Shown.Text(made, _day, _study.Rulebook.Vocabulary, judged) };
    }
}
