namespace Byrelaw.Judging.Tuning;

/// <summary>The animals next to a number's value in force: those let in last, or those that would be let in next.</summary>
/// <param name="IsLetIn">True for those that would be let in.</param>
/// <param name="Value">The value that reaches the last of them.</param>
/// <param name="Animals">By number.</param>
/// <param name="Common">What tells them from the rest of those the rule is for; often nothing does.</param>
public sealed record MarginGroup(bool IsLetIn, decimal Value, ImmutableArray<TunedAnimal> Animals, ImmutableArray<CommonTrait> Common)
{
    /// <summary>Of fewer than these nothing is claimed. Common practice, no source.</summary>
    public const int Fewest = 3;
}

/// <summary>Gathers them: step by step away from the value in force, until there are enough to say something of.</summary>
internal static class MarginGroups
{
    /// <summary>So many are enough to look at. Common practice, no source.</summary>
    private const int Enough = 5;

    private static readonly bool[] LetInFirst = [true, false];

    /// <summary>Up to four: let in and kept out, below and above.</summary>
    public static ImmutableArray<MarginGroup> Of(NumberTuning tuning, ListJudgement judged, Traits traits)
    {
        var all = judged.Animals.ToDictionary(animal => animal.Number, animal => (IReadOnlySet<Trait>)traits.Of(animal));
        var isFor = judged.Animals.Where(animal => animal.Rules.Any(rule => rule.Name == tuning.Number.Rule.Name && rule.Answer != RuleAnswer.DoesNotApply)).Select(animal => animal.Number).ToHashSet();
        IReadOnlyList<int>[] sides = [UsableBands.Below(tuning), UsableBands.Above(tuning)];
        return
        [
            .. from steps in sides
               from isLetIn in LetInFirst
               let found = Gather(tuning, steps, isLetIn)
               where !found.Animals.IsEmpty
               select new MarginGroup(
                   isLetIn, tuning.ValueOf(found.Step), found.Animals,
                   found.Animals.Length < MarginGroup.Fewest ? [] : Common(found.Animals)),
        ];

        ImmutableArray<CommonTrait> Common(ImmutableArray<TunedAnimal> animals) => InCommon.Of(
            [.. animals.Select(animal => all[animal.Number])], [.. isFor.Union(animals.Select(animal => animal.Number)).Select(number => all[number])]);
    }

    private static (int Step, ImmutableArray<TunedAnimal> Animals) Gather(NumberTuning tuning, IReadOnlyList<int> steps, bool isLetIn)
    {
        var (step, animals) = (0, ImmutableArray<TunedAnimal>.Empty);
        foreach (var next in steps)
        {
            ImmutableArray<TunedAnimal> now = [.. tuning.Changes(tuning.CurrentStep, next).Where(change => isLetIn ? change.IsLetIn : change.IsKeptOut).Select(change => change.Animal)];
            (step, animals) = now.Length > animals.Length ? (next, now) : (step, animals);
            if (animals.Length >= Enough)
            {
                break;
            }
        }

        return (step, animals);
    }
}
