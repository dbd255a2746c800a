namespace Byrelaw.Judging.Passing;

/// <summary>
/// A condition under <c>if not known pass</c>: what keeps it open is told apart into what is not there, which may pass, and what is
/// there and cannot be relied on, which may not.
/// </summary>
internal sealed class BarringCriterion(Criterion asked, Bar bar) : Criterion
{
    // The bar is asked daily, and what is asked only where that may have changed.
    private int _animal = -1, _from, _until;
    private Kleene _answer;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        var answer = notes is null ? Remembered(animal, day, ref until) : asked.On(animal, day, ref until, notes);
        if ((answer.Assumed != Truth.Unknown && answer.Strict != Truth.Unknown) || !bar.May(animal))
        {
            return answer;
        }

        // Which bad records a window holds may change from day to day.
        until = Math.Min(until, day);
        return bar.Is(animal, day) ? answer.Barred() : answer;
    }

    private Kleene Remembered(int animal, int day, ref int until)
    {
        if (animal != _animal || day < _from || day > _until)
        {
            (_animal, _from, _until) = (animal, day, int.MaxValue);
            _answer = asked.On(animal, day, ref _until, null);
        }

        until = Math.Min(until, _until);
        return _answer;
    }

    public override void OnAll(int day, Span<Kleene> answers) => asked.OnAll(day, answers);
}
