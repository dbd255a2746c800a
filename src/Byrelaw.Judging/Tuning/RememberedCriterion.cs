namespace Byrelaw.Judging.Tuning;

/// <summary>A criterion that works out an animal's timeline once and then reads it: what a number does not move is asked many times over.</summary>
internal sealed class RememberedCriterion(Criterion inner, JudgingDays days) : Criterion
{
    private readonly DayTimeline _line = new();
    private int _animal = -1;
    private int _step;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        if (animal != _animal)
        {
            _line.Trace(inner, animal, days.SpanFirst, days.SpanLast);
            (_animal, _step) = (animal, 0);
        }

        while (_line.From(_step) > day)
        {
            _step--;
        }

        while (_line.To(_step) < day)
        {
            _step++;
        }

        until = Math.Min(until, _line.To(_step));
        return _line[_step];
    }
}
