using Byrelaw.Judging.Criteria;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Lists;

namespace Byrelaw.Judging.Tests.Bounds;

/// <summary>A timeline of any number of steps says, on every day, what was answered on it.</summary>
public sealed class DayTimelineTests
{
    [Fact]
    public void A_line_of_any_length_holds_every_answer() => Gen.Select(Gen.Int[1, 3], Gen.Int[1, 300], Gen.Int[1, 5]).Hold((every, days, again) =>
    {
        var line = new DayTimeline();
        for (var i = 0; i < again; i++)
        {
            line.Trace(new Alternating(every + i), 0, 1000, 1000 + days);
            for (var step = 0; step < line.Count; step++)
            {
                for (var day = line.From(step); day <= line.To(step); day++)
                {
                    line[step].ShouldBe(Alternating.At(day, every + i));
                }
            }

            (line.From(0), line.To(line.Count - 1)).ShouldBe((1000, 1000 + days));
        }
    }, count: 200);

    private sealed class Alternating(int every) : Criterion
    {
        public static Truths.Kleene At(int day, int every) => day / every % 2 == 0 ? Truths.Kleene.True : Truths.Kleene.False;

        public override Truths.Kleene On(int animal, int day, ref int until, Notes? notes)
        {
            until = Math.Min(until, day);
            return At(day, every);
        }
    }
}
