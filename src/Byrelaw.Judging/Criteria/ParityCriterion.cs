namespace Byrelaw.Judging.Criteria;

/// <summary><c>parity at most 6</c>: as recorded for its day, taken on or back by calvings; else as counted where calvings are covered from birth.</summary>
internal sealed class ParityCriterion(HerdDays days, ParityCondition condition, int? calving)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private const int Unreadable = -2;
    private const string Fact = "parity";
    private const string FactsDay = "parity on";

    private readonly Limits _limits = Limits.Of(condition.Test);
    private readonly Parities _parities = new(days, calving);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var parity = _parities.On(animal, day, ref until);
        var truth = _limits.Accept(parity.Least, parity.Most);
        if (notes is not null)
        {
            Note(animal, day, parity, truth, notes);
        }

        return Kleene.Of(truth, _limits.Accept(parity.Least, parity.MostStrictly));
    }

    private void Note(int animal, int day, Parity parity, Truth truth, Notes notes)
    {
        if (calving is { } kind)
        {
            var first = Days.Herd.Runs[kind].Starts[animal];
            for (var i = first; i < first + parity.Counted; i++)
            {
                notes.Entry(kind, i);
            }
        }

        var recorded = Days.Herd.RecordedParity[animal];
        if (recorded >= 0)
        {
            notes.Fact(animal, Fact, ValueText.Write(recorded));
            if (Days.Herd.ParityOn is { Length: > 0 } on && on[animal] is > Day.Start and < Day.End)
            {
                notes.Fact(animal, FactsDay, ValueText.WriteDay(on[animal]));
            }
        }

        notes.Number(parity.Least, parity.Most, null, null, 1, _limits);
        if (truth == Truth.Unknown)
        {
            Missing(animal, day, recorded, notes);
        }
        else if (truth == Truth.False)
        {
            notes.Remedy(parity.Most < _limits.Low ? new Remedy(RemedyKind.NewEvent, ["calving"]) : new Remedy(RemedyKind.ForGood, [Fact]));
        }
    }

    /// <summary>The cell, unless it is there and nothing speaks against it; calvings between its day and the one that is asked about; rows that
    /// may be one more.</summary>
    private void Missing(int animal, int day, int recorded, Notes notes)
    {
        var on = Days.Herd.DayOfParity(animal);
        if (recorded >= 0 && on <= Day.Start)
        {
            notes.FactMissing(animal, FactsDay, isUnreadable: true);
        }
        else if (recorded < 0 || _parities.SpeakAgainstEachOther(animal) || (on > Days.KnownDay && day < on))
        {
            notes.FactMissing(animal, Fact, recorded == Unreadable);
        }

        if (calving is not { } kind)
        {
            return;
        }

        if (recorded >= 0 && on > Day.Start && day != on)
        {
            notes.NotKept(kind, Math.Min(day, on) + 1, Math.Max(day, on));
        }

        notes.Unreadable(animal, kind, Day.Start, recorded >= 0 && on > Day.Start ? Math.Max(day, on) : day);
    }
}
