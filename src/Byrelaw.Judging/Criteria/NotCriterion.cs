namespace Byrelaw.Judging.Criteria;

/// <summary><c>not cycling</c>.</summary>
internal sealed class NotCriterion(Criterion condition) : Criterion
{
    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        notes?.BeginNot();
        var answer = !condition.On(animal, day, ref until, notes);
        notes?.CloseNot();
        return answer;
    }
}
