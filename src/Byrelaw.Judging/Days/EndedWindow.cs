namespace Byrelaw.Judging.Days;

/// <summary><c>before last X</c> and <c>in the N days after last X</c>: both ends hang on the day of X, so that day is set before the window is
/// read, by <see cref="Criteria.EachDayCriterion"/>.</summary>
internal sealed class EndedWindow : WindowReader
{
    private readonly Reckoning? _length;
    private int _low = Day.Start;

    /// <param name="of">What X is.</param>
    /// <param name="length">How long after it the window ends; null for one that ends before it.</param>
    public EndedWindow(Anchor of, Reckoning? length)
    {
        (Of, _length) = (of, length);

        // Until a day is set it holds all days, as what would bar an animal is looked for in it.
        HighStands = Day.End;
    }

    /// <summary>What X is.</summary>
    public Anchor Of { get; }

    /// <summary>Takes X to have been on a day; her birth where it never was.</summary>
    public void Set(int day) => (_low, HighStands) = _length is null ? (Day.Start, day - 1) : (day, _length.After(day));

    public override WindowReading Read(int animal, int day, ref int until, Notes? notes)
    {
        var last = Of.Read(animal, day, ref until, notes);
        return new(
            new Bounds(_low, _low, _low, Math.Min(day, HighStands!.Value)), false, last.State != AnchorState.NotKnown, last.StrictState != AnchorState.NotKnown);
    }
}
