using Byrelaw.Judging.Tuning;

namespace Byrelaw.Judging.Tests.Tuning;

/// <summary>A random rulebook and herd, one of its numbers, and where to look among that number's values.</summary>
/// <param name="Judged">The rules and records.</param>
/// <param name="Which">Picks the number.</param>
/// <param name="Looks">Each picks a value.</param>
public sealed record TuneCase(JudgingCase Judged, int Which, int[] Looks)
{
    public static readonly Gen<TuneCase> Any =
        from judged in JudgingCase.Any
        from which in Gen.Int[0, 1000]
        from looks in Gen.Int[0, 100_000].Array[6]
        select new TuneCase(judged with { KnownOn = null, On = null }, which, looks);

    public Rulebook Rulebook => Judged.Rulebook;

    public Herd Herd { get; } = HerdReader.Read(FarmCsv.Animals(Judged.Farm), FarmCsv.Events(Judged.Farm), Judged.Rulebook.Vocabulary, Judged.Rulebook.Records);

    /// <summary>The number looked at, and a list that it may move; null where no rule holds a number.</summary>
    public (RuleNumber Number, Choice Choice)? Picked
    {
        get
        {
            var numbers = Rulebook.Rules.SelectMany(rule => NumbersOfRule.Of(Rulebook, rule)).ToList();
            if (numbers.Count == 0)
            {
                return null;
            }

            var choices = Rulebook.Programme!.Choices;
            var number = numbers[Which % numbers.Count];
            return (number, choices.FirstOrDefault(choice => choice.List == number.Rule.List) ?? choices[0]);
        }
    }

    /// <summary>Values at, beside and between those where something changes, and anywhere.</summary>
    public IEnumerable<decimal> Values(NumberTuning tuning)
    {
        var one = tuning.Number.Number.IsWhole ? 1m : TrialGrain;
        foreach (var look in Looks)
        {
            var (step, how) = (tuning.Steps[look % tuning.Steps.Length].Range, look / 7 % 5);
            var (from, to) = (step.From ?? (step.To ?? 0) - 20, step.To ?? (step.From ?? 0) + 20);
            var value = how switch
            {
                0 => from,
                1 => to,
                2 => from - one,
                3 => to + one,
                _ => from + (Math.Floor((to - from) * (look % 97) / 97 / one) * one),
            };
            var (lowest, highest) = ((decimal?)tuning.Number.Number.Lowest ?? value, (decimal?)tuning.Number.Number.Highest ?? value);
            yield return Math.Max(lowest, Math.Min(highest, value));
        }
    }

    /// <summary>Every animal's answer by the rulebook as it stands.</summary>
    public Dictionary<string, Answer> Answers(Rulebook rulebook, Choice choice) =>
        new Judge(rulebook, Herd).JudgeAll().Lists.First(list => list.Choice.List == choice.List).Animals.ToDictionary(animal => animal.Number, animal => animal.Answer);

    public override string ToString() => Picked is { } picked
        ? $"{picked.Number.Rule.Name}: {picked.Number.Number} in {Language.Canonical.CanonicalText.Of(Rulebook).Length} letters\n{Judged}" : Judged.ToString();

    private const decimal TrialGrain = 0.000001m;
}
