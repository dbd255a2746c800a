namespace Byrelaw.Judging.Criteria;

/// <summary>A defined condition, worked out once for an animal and day however many rules use it.</summary>
internal sealed class DefineCriterion(string name, Criterion condition) : Criterion
{
    private int _animal = -1, _day, _until;
    private Kleene _answer;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        if (notes is not null && notes.Enter(name))
        {
            Work(animal, day, notes);
            notes.Leave();
        }
        else
        {
            if (animal != _animal || day < _day || day > _until)
            {
                Work(animal, day, null);
            }

            notes?.Again(name, _answer.Assumed);
        }

        until = Math.Min(until, _until);
        return _answer;
    }

    private void Work(int animal, int day, Notes? notes)
    {
        var until = int.MaxValue;
        _answer = condition.On(animal, day, ref until, notes);
        (_animal, _day, _until) = (animal, day, until);
    }
}
