namespace Byrelaw.Judging.Criteria;

/// <summary><c>in mob Hill or River</c>. Of a mob that no record names nobody can say who is not in it.</summary>
internal sealed class InMobCriterion(HerdDays days, InMobCondition condition)
    : LeafCriterion(days, condition, restsOnCoverage: false)
{
    private readonly int[] _asked = [.. condition.Mobs.Select(days.Herd.Mobs.Find)];

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var mobs = Days.Herd.Mobs;
        var stay = mobs.StayAt(animal, day);
        var next = stay < 0 ? mobs.Starts[animal] : stay + 1;
        if (next < mobs.Starts[animal + 1])
        {
            until = Math.Min(until, mobs.From[next] - 1);
        }

        if (stay < 0 || mobs.Mob[stay] == MobStays.NotKnown)
        {
            notes?.Nothing();
            notes?.MobNotKnown();
            return Kleene.Unknown;
        }

        notes?.Stay(animal, stay);
        var isIn = Array.IndexOf(_asked, mobs.Mob[stay]) >= 0;
        if (!isIn && Array.IndexOf(_asked, MobStays.NotKnown) >= 0)
        {
            notes?.MobNotKnown();
            return Kleene.Unknown;
        }

        notes?.Remedy(new Remedy(RemedyKind.NewEvent, [Days.Herd.Vocabulary.MobMove.Name]));
        return isIn != condition.IsNot ? Kleene.True : Kleene.False;
    }
}
