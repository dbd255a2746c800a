using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Judging.Tests.Gates;

/// <summary>Both checks and what a method suits, held to the literal evaluator on small farms drawn at random.</summary>
public sealed class GatesTests
{
    [Fact]
    public void Whoever_is_sure_passes_both_lists_on_her_own_days_by_the_literal_evaluator_and_nobody_else()
    {
        var sure = 0;
        Each.Hold(SeasonCase.Any, Cases.Count / 30, one =>
        {
            var sessions = SureAnimals.Sessions(one);
            var (said, literal) = (SureAnimals.Of(sessions), SureAnimals.Literal(one, sessions));
            Interlocked.Add(ref sure, said.Count);
            return said.SetEquals(literal) ? null : $"sure {string.Join(", ", said.Except(literal))}; by the literal evaluator alone {string.Join(", ", literal.Except(said))}";
        }, one => one.ToString());
        (Drawn.Only is not null || sure > 10).ShouldBeTrue($"{sure} sure");
    }

    [Fact]
    public void Whoever_is_named_or_spare_is_sure_by_the_literal_evaluator() => SeasonCase.Any.Hold(one =>
    {
        var named = Namer.Name(new Judge(one.Rulebook, one.Herd).JudgeAll(), SeasonCase.Today);
        var literal = SureAnimals.Literal(one, [.. named.Select(session => session.Session)]);
        named.SelectMany(session => session.Named.Concat(session.Spares).Select(animal => (session.Number, animal.Method, animal.Animal))).Where(animal => !literal.Contains(animal)).ShouldBeEmpty();
    }, count: 2, show: one => one.ToString());

    /// <summary>A row that cannot be read, a promise that is dropped, a result that is pending.</summary>
    [Fact]
    public void A_record_taken_away_makes_nobody_sure() => Gen.Select(SeasonCase.Any, Gen.Int[0, 2], Gen.Int[0, 1000]).Hold((one, how, place) =>
    {
        var less = how == 0 ? one with { Promised = one.Promised.RemoveAt(place % one.Promised.Length) } : one with { Farm = WithoutA(one.Farm, how == 1, place) };
        less = new SeasonCase(less.Farm, less.Promised);
        SureAnimals.Of(SureAnimals.Sessions(less)).Except(SureAnimals.Of(SureAnimals.Sessions(one))).ShouldBeEmpty($"less: {less}");
    }, count: 12);

    private static PlainFarm WithoutA(PlainFarm farm, bool unreadable, int place)
    {
        var row = farm.Events[place % farm.Events.Length];
        var worse = unreadable || row.Value.Length == 0 ? row with { Date = row.Date.Replace("2026-", "20x6-", StringComparison.Ordinal) } : row with { Value = "pending", Unit = "" };
        return farm with { Events = farm.Events.Replace(row, worse) };
    }
}
