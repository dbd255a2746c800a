namespace Byrelaw.Judging.Passing;

/// <summary>
/// A condition under <c>if not known pass</c>: what keeps it open is told apart into what is not there, which may pass, and what is
/// there and cannot be relied on, which may not.
/// </summary>
internal sealed class BarringCriterion(Criterion asked, Bar bar) : Criterion
{
    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        var answer = asked.On(animal, day, ref until, notes);
        if ((answer.Assumed != Truth.Unknown && answer.Strict != Truth.Unknown) || !bar.May(animal))
        {
            return answer;
        }

        // Which bad records a window holds may change from day to day; few animals have any.
        until = Math.Min(until, day);
        return bar.Is(animal, day) ? answer.Barred() : answer;
    }

    public override void OnAll(int day, Span<Kleene> answers) => asked.OnAll(day, answers);
}
