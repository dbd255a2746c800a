namespace Byrelaw.Judging.Criteria;

/// <summary>She must be in the herd.</summary>
internal sealed class PresenceCriterion(HerdDays days) : Criterion
{
    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        var membership = days.Herd.Membership;
        var stretch = membership.StretchAt(animal, day);
        if (stretch + 1 < membership.Starts[animal + 1])
        {
            until = Math.Min(until, membership.From[stretch + 1] - 1);
        }

        if (notes is not null && membership.Lines[stretch] > 0)
        {
            notes.Row(membership.Kinds[stretch], membership.From[stretch], membership.Lines[stretch]);
        }

        return membership.States[stretch] switch
        {
            Presence.In => Kleene.True,
            Presence.Out => Kleene.False,
            _ => Kleene.Unknown,
        };
    }
}
