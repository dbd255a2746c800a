namespace Byrelaw.Judging.Criteria;

/// <summary>What could not be read is never known, so it never lets an animal through.</summary>
internal sealed class BrokenCriterion : Criterion
{
    public static readonly BrokenCriterion Instance = new();

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        notes?.Node(Truth.Unknown, isForGood: false);
        return Kleene.Unknown;
    }
}
