using System.Collections.Immutable;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Tuning;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Tuning;

/// <summary>Judges a list with two numbers changed at once, for values of each at which it lets others in by itself.</summary>
public static class PairTuner
{
    private const int EachWay = 4;

    /// <summary>The table.</summary>
    /// <param name="rulebook">Its vocabulary must be the herd's.</param>
    /// <param name="herd">The records.</param>
    /// <param name="first">One number, tuned by itself.</param>
    /// <param name="second">Another, tuned on the same list.</param>
    public static PairTuning Of(Rulebook rulebook, Herd herd, NumberTuning first, NumberTuning second)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var (down, along) = (Values(first), Values(second));
        return new PairTuning(first.Number, second.Number, first.Choice, down, along, [.. down.Select(a => along.Select(b => Cell(a, b)).ToImmutableArray())]);

        PairCell Cell(decimal a, decimal b)
        {
            var answers = new Judge(rulebook.With(first.Number, a).With(second.Number, b), herd).Answers(first.Choice).Answers;
            return new PairCell(answers.Count(answer => answer == Answer.Ready), answers.Count(answer => answer == Answer.OnCourse), answers.Count(answer => answer == Answer.Ask));
        }
    }

    /// <summary>The value in force, and the nearest few each way at which others may be used.</summary>
    private static ImmutableArray<decimal> Values(NumberTuning tuning) =>
        [.. UsableBands.Below(tuning).Take(EachWay).Concat(UsableBands.Above(tuning).Take(EachWay)).Select(tuning.ValueOf).Append(tuning.Current).Order()];
}
