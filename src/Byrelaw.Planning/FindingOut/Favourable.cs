using System.Globalization;
using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.FindingOut;

/// <summary>
/// What a record would have to say so that a condition is as its rule wants it: of a test an answer that it accepts, of a measure the limits of the rules and half-way
/// between two, of an event that it happened.
/// </summary>
internal static class Favourable
{
    /// <summary>More limits than this are never tried: a rule has two.</summary>
    private const int MostValues = 6;

    /// <summary>The kinds that it is about, each with the values that would do, the likeliest first.</summary>
    public static IEnumerable<(Kind Kind, string Value, bool OfTheMob)> Of(Finding finding, Rulebook rulebook, Herd herd, int animal)
    {
        var wanted = !finding.Inverted;
        return finding.Condition switch
        {
            TestCondition test => test.Test.Answers.Where((_, answer) => (test.Answers.Contains(answer) != test.IsNot) == wanted).Select(answer => ((Kind)test.Test, answer, false)),
            CountCondition count => count.Counted.SelectMany(counted => Of(counted, AsksForOne(count.Test) == wanted)),
            ApartCondition apart => apart.Counted.SelectMany(counted => Of(counted, wanted)),
            TimeSinceCondition since => since.Kinds.Select(kind => ((Kind)kind, "", false)),
            SpellCondition { Not: var not } spell => [(not == wanted ? spell.Spell.Until : spell.Spell.From, "", false)],
            MeasuredCondition measured => Values(measured.Test, measured.Measure, wanted, rulebook, herd, animal).Select(value => ((Kind)measured.Measure, value, false)),
            MobMeasuredCondition mob => Values(mob.Test, mob.Measure, wanted, rulebook, herd, animal).Select(value => ((Kind)mob.Measure, value, true)),
            MobCountCondition mob => Values(mob.Test, mob.Measure, AsksForOne(mob.Count) == wanted, rulebook, herd, animal).Select(value => ((Kind)mob.Measure, value, true)),
            _ => [],
        };
    }

    private static IEnumerable<(Kind Kind, string Value, bool OfTheMob)> Of(Counted counted, bool happens) => counted switch
    {
        { Kind: TestKind test, Answer: >= 0 and var answer } => test.Answers.Where((_, place) => (place == answer) == happens).Select(one => ((Kind)test, one, false)),
        _ => happens ? [(counted.Kind, "", false)] : [],
    };

    /// <summary>Whether a count asks that something happened at all.</summary>
    private static bool AsksForOne(CountTest test) => test.Comparison is Comparison.AtLeast or Comparison.MoreThan || test is { Comparison: Comparison.Exactly or Comparison.Between, Low: > 0 };

    private static IEnumerable<string> Values(NumberTest test, MeasureKind measure, bool wanted, Rulebook rulebook, Herd herd, int animal)
    {
        List<double> own = [.. new[] { Number(test.Low, herd, animal), Number(test.High, herd, animal) }.OfType<double>().Distinct()];
        var all = own.Concat(Tests(rulebook, measure).SelectMany(other => new[] { other.Low, other.High }).Where(limit => limit.PercentOf is null).Select(limit => limit.Value)).Distinct().Order().ToList();
        return own.Concat(all.Zip(all.Skip(1), (one, next) => (one + next) / 2)).Concat(all).Distinct()
            .Where(value => Accepts(test, own, value) == wanted).Take(MostValues).Select(value => value.ToString("R", CultureInfo.InvariantCulture));
    }

    private static bool Accepts(NumberTest test, List<double> limits, double value) => limits.Count > 0 && test.Comparison switch
    {
        Comparison.AtLeast => value >= limits[0],
        Comparison.AtMost => value <= limits[0],
        Comparison.MoreThan => value > limits[0],
        Comparison.LessThan => value < limits[0],
        Comparison.Exactly => value == limits[0],
        _ => value >= limits[0] && value <= limits[^1],
    };

    private static double? Number(Limit limit, Herd herd, int animal) => limit.PercentOf is not { } fact ? limit.Value
        : herd.Facts[fact.Id] is { IsThere: true } column && column.States[animal] == FactState.Known ? limit.Value / 100 * column.Numbers[animal] : null;

    private static IEnumerable<NumberTest> Tests(Rulebook rulebook, MeasureKind measure) => rulebook.Rules.Where(rule => !rule.IsBroken).SelectMany(rule => rule.Needs.Leaves(rulebook)).Select(leaf => leaf switch
    {
        MeasuredCondition one when one.Measure.Declaration.Id == measure.Declaration.Id && one.Aggregate != Aggregate.Change => one.Test,
        MobMeasuredCondition one when one.Measure.Declaration.Id == measure.Declaration.Id => one.Test,
        _ => null,
    }).OfType<NumberTest>();
}
