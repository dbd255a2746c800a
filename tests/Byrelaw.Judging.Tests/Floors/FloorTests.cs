namespace Byrelaw.Judging.Tests.Floors;

/// <summary>
/// The floor, held by an evaluator that knows nothing of rule files: "whatever the layers, usable on a list with a floor implies its four rules".
/// </summary>
public sealed class FloorTests
{
    [Fact]
    public void The_judge_says_of_the_floor_what_the_literal_one_says() =>
        Each.Hold(FloorCase.Any, Cases.Count / 40, one => Difference.Of(one.AsJudged, isExplained: false), one => one.ToString());

    [Fact]
    public void Whoever_may_be_used_on_a_list_with_a_floor_meets_its_four_rules()
    {
        var (used, held) = (0, 0);
        Each.Hold(FloorCase.Any, Cases.Count / 3, one =>
        {
            var floor = new UsedAgainstFloor(one);
            Interlocked.Add(ref used, floor.Used);
            Interlocked.Add(ref held, floor.HeldByTheFloorAlone);
            return floor.Wrong;
        }, one => one.ToString());

        // Drawn at random, some are let through, and some are held by nothing but the floor.
        (Drawn.Only is not null || (used > 20 && held > 20)).ShouldBeTrue($"{used} used, {held} held by the floor alone");
    }
}
