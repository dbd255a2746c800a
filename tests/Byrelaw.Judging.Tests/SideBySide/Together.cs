using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Two rules that each hold on later days, but never on the same ones, read off the reference's days.</summary>
public static class Together
{
    /// <summary>What differs; null where nothing does.</summary>
    public static string? Differs(AnimalJudgement judged, JudgedAnimal reference, string place)
    {
        if (judged.NeverTogether.IsDefaultOrEmpty)
        {
            // It is worked out only where the answer is No.
            return judged.Answer == Answer.No && Pair(reference) is { } missed ? $"{place}: nothing of {missed.One} and {missed.Other}, which never hold together" : null;
        }

        return Pair(reference) is { } pair && judged.NeverTogether.SequenceEqual([pair.One, pair.Other]) ? null
            : $"{place}: never together {string.Join(", ", judged.NeverTogether)}, reference {Pair(reference)}";
    }

    private static (string One, string Other)? Pair(JudgedAnimal animal)
    {
        var (from, to) = animal.Judged;
        var counted = animal.Rules.Where(rule => rule.Rule?.OnTheDay != true).ToList();
        if (counted.Exists(rule => rule.Answer(from, to) == RuleAnswer.NotMet && !Holds(from, to, [rule])))
        {
            return null;
        }

        var ever = counted.Where(rule => rule.Days.Between(rule.Days.First, rule.Days.Last).Any(day => day.Truth == Truth.True)).ToList();
        for (var i = 0; i < ever.Count; i++)
        {
            for (var j = i + 1; j < ever.Count; j++)
            {
                if (!Holds(from, to, [ever[i], ever[j]]))
                {
                    return (ever[i].Name, ever[j].Name);
                }
            }
        }

        return null;
    }

    /// <summary>Whether all hold on some later stretch.</summary>
    private static bool Holds(int from, int to, JudgedRule[] rules) => Stretches.Later(from, to, rules[0].Days.Last).Any(stretch =>
        Enumerable.Range(stretch.From, stretch.To - stretch.From + 1).All(day => Array.TrueForAll(rules, rule => rule.Days.On(day).Truth == Truth.True)));
}
