namespace Byrelaw.Judging.Criteria;

/// <summary>At least so many of some conditions: one for <c>any of</c>, each for <c>all of</c>. <c>none of</c> is the
/// opposite of <c>any of</c>.</summary>
internal sealed class ListCriterion(Criterion[] items, int atLeast) : Criterion
{
    private int _failed;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        var list = notes?.BeginList() ?? 0;
        var answer = atLeast == items.Length ? All(animal, day, ref until, notes)
            : atLeast == 1 ? Any(animal, day, ref until, notes)
            : AtLeast(animal, day, ref until, notes);
        notes?.CloseList(list, answer.Assumed, atLeast);
        return answer;
    }

    private Kleene Any(int animal, int day, ref int until, Notes? notes)
    {
        var answer = Kleene.False;
        var together = int.MaxValue;
        foreach (var item in items)
        {
            var own = int.MaxValue;
            var one = item.On(animal, day, ref own, notes);
            if (one.IsSurelyTrue && notes is null)
            {
                until = Math.Min(until, own);
                return one;
            }

            together = Math.Min(together, own);
            answer |= one;
        }

        until = Math.Min(until, together);
        return answer;
    }

    private Kleene All(int animal, int day, ref int until, Notes? notes)
    {
        // What failed the last time most likely fails again, and then nothing else need be asked.
        var own = int.MaxValue;
        if (notes is null && items[_failed].On(animal, day, ref own, null) is { IsSurelyFalse: true } failed)
        {
            until = Math.Min(until, own);
            return failed;
        }

        var answer = Kleene.True;
        var together = int.MaxValue;
        for (var i = 0; i < items.Length; i++)
        {
            own = int.MaxValue;
            var one = items[i].On(animal, day, ref own, notes);
            if (one.IsSurelyFalse && notes is null)
            {
                _failed = i;
                until = Math.Min(until, own);
                return one;
            }

            together = Math.Min(together, own);
            answer &= one;
        }

        until = Math.Min(until, together);
        return answer;
    }

    private Kleene AtLeast(int animal, int day, ref int until, Notes? notes)
    {
        int assumedTrue = 0, assumedMaybe = 0, strictTrue = 0, strictMaybe = 0;
        var pending = Kleene.True;
        foreach (var item in items)
        {
            var one = item.On(animal, day, ref until, notes);
            Add(one.Assumed, ref assumedTrue, ref assumedMaybe);
            Add(one.Strict, ref strictTrue, ref strictMaybe);
            pending = pending.OrPending(one);
        }

        return Kleene.Of(TruthOf(assumedTrue, assumedMaybe), TruthOf(strictTrue, strictMaybe)).OrPending(pending).Normal();
    }

    private static void Add(Truth truth, ref int sure, ref int maybe)
    {
        sure += truth == Truth.True ? 1 : 0;
        maybe += truth == Truth.Unknown ? 1 : 0;
    }

    private Truth TruthOf(int sure, int maybe) =>
        sure >= atLeast ? Truth.True : sure + maybe < atLeast ? Truth.False : Truth.Unknown;
}
