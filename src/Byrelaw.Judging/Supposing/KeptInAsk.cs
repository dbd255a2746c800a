using Byrelaw.Records.Reading;

namespace Byrelaw.Judging.Supposing;

/// <summary>Counts whom something alone keeps in Ask: those who are asked about, and would not be without it.</summary>
public sealed class KeptInAsk
{
    private readonly SupposedFarm _farm;
    private readonly ImmutableArray<Choice> _choices;
    private readonly bool[][] _asked;

    /// <summary>Judges the farm as it is.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="choices">Its lists.</param>
    public KeptInAsk(SupposedFarm farm, ImmutableArray<Choice> choices)
    {
        (_farm, _choices) = (farm, choices);
        _asked = Asked(new Supposition(), out var judged);
        Judged = judged.Count(isJudged => isJudged);
        InAsk = Count(_ => true);
    }

    /// <summary>Animals on any list.</summary>
    public int Judged { get; }

    /// <summary>Those of them who are asked about on any list.</summary>
    public int InAsk { get; }

    /// <summary>How many are asked about on some list as things are, and not as is supposed.</summary>
    public int Without(Supposition supposition)
    {
        var then = Asked(supposition, out _);
        return Count(animal => Enumerable.Range(0, _choices.Length).Any(list => _asked[list][animal] && !(animal < then[list].Length && then[list][animal])));
    }

    /// <summary>The same without some rows of what happened.</summary>
    /// <param name="lines">Their lines in the landed form.</param>
    public int Without(IReadOnlySet<int> lines) => Without(new Supposition { Records = new Supposed { WithoutLines = lines } });

    private int Count(Func<int, bool> holds) => Enumerable.Range(0, _asked.Length == 0 ? 0 : _asked[0].Length).Count(animal => _asked.Any(list => list[animal]) && holds(animal));

    private bool[][] Asked(Supposition supposition, out bool[] judged)
    {
        var judge = _farm.Judge(supposition);
        judged = new bool[judge.Herd.Count];
        var asked = new bool[_choices.Length][];
        for (var list = 0; list < asked.Length; list++)
        {
            asked[list] = new bool[judged.Length];
            var (animals, answers) = judge.Answers(_choices[list]);
            for (var i = 0; i < animals.Length; i++)
            {
                judged[animals[i]] = true;
                asked[list][animals[i]] = answers[i] == Answer.Ask;
            }
        }

        return asked;
    }
}
