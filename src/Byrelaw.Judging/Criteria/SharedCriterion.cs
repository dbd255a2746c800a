namespace Byrelaw.Judging.Criteria;

/// <summary>A condition that several rules ask in the same words, worked out once for an animal and day.</summary>
internal sealed class SharedCriterion(Criterion condition) : Criterion
{
    private int _animal = -1, _from, _until;
    private Kleene _answer;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        if (notes is not null)
        {
            return condition.On(animal, day, ref until, notes);
        }

        if (animal != _animal || day < _from || day > _until)
        {
            (_animal, _from, _until) = (animal, day, int.MaxValue);
            _answer = condition.On(animal, day, ref _until, null);
        }

        until = Math.Min(until, _until);
        return _answer;
    }

    public override void OnAll(int day, Span<Kleene> answers) => condition.OnAll(day, answers);
}
