using Byrelaw.Checking.Trouble.Finders;

namespace Byrelaw.Checking.Tests.Trouble;

/// <summary>What is claimed of all animals is held against random rules, thousands of random animals, and the judge.</summary>
public sealed class NeverContradictedTests
{
    private static readonly LocalDate Day = new(2026, 10, 19);

    [Fact]
    public void No_animal_is_judged_otherwise_than_is_claimed_of_all()
    {
        var claims = new Dictionary<TroubleSort, int>();
        for (var seed = 0; seed < 150; seed++)
        {
            var random = new Random(seed);
            var rulebook = Written.Read(new RandomRules(random).Write(12));
            var herd = new RandomAnimals(random, Day).Herd(120, rulebook.Vocabulary).Read(rulebook.Vocabulary);
            herd.Problems.ShouldBeEmpty();
            var truths = new Judge(rulebook, herd).TruthsOn(rulebook.Programme!.Choices[0], Day)[^rulebook.Rules.Length..];
            foreach (var finding in Findings(rulebook))
            {
                claims[finding.Sort] = claims.GetValueOrDefault(finding.Sort) + 1;
                for (var animal = 0; animal < herd.Count; animal++)
                {
                    Contradicts(finding, rulebook, truths, animal).ShouldBeFalse(
                        $"seed {seed}, animal {animal + 1}: {finding.Problem.Line}: {finding.Problem.Message}\n{finding.Problem.LineText}");
                }
            }
        }

        claims.Values.Sum().ShouldBeGreaterThan(300);
        claims.Keys.ShouldBe([TroubleSort.NeverMet, TroubleSort.AlwaysMet, TroubleSort.NeverMetWith, TroubleSort.ImpliedBy], ignoreOrder: true);
    }

    /// <summary>Claims about whole rules: what is claimed of a part of one is not told by the rule's answer.</summary>
    private static IEnumerable<TroubleFound> Findings(Rulebook rulebook)
    {
        var study = new Study(rulebook);
        return [.. RuleTrouble.Find(study), .. PairTrouble.Find(study)];
    }

    private static bool Contradicts(TroubleFound finding, Rulebook rulebook, Truth[][] truths, int animal)
    {
        var rule = Of(finding.Name);
        return finding.Sort switch
        {
            TroubleSort.NeverMet => AppliesTo(rule) && Is(rule, Truth.True) && rule.IfNotKnown != IfNotKnown.Pass,
            TroubleSort.AlwaysMet => Is(rule, Truth.False) && rule.IfNotKnown != IfNotKnown.Exclude,
            TroubleSort.NeverMetWith => AppliesTo(rule) && AppliesTo(Of(finding.Other)) && Is(rule, Truth.True) && Is(Of(finding.Other), Truth.True),
            TroubleSort.ImpliedBy => Is(Of(finding.Other), Truth.True) && Is(rule, Truth.False),
            _ => false,
        };

        Rule Of(string? name) => rulebook.Rules.Single(other => other.Name == name);
        bool Is(Rule one, Truth truth) => truths[rulebook.Rules.IndexOf(one)][animal] == truth;
        bool AppliesTo(Rule one) => one.Audience switch
        {
            Audience.Cows => Is(Of("cow"), Truth.True),
            Audience.Heifers => Is(Of("heifer"), Truth.True),
            _ => true,
        };
    }
}
