namespace Byrelaw.Judging.Passing;

/// <summary>Of her parity, and of whether she is a cow or a heifer.</summary>
internal sealed class ParityBar(HerdDays days, BadRecords bad, int? calving) : Bar
{
    private readonly bool _mayTouch = calving is { } kind && bad.Touch(kind);

    public override bool May(int animal) =>
        _mayTouch || bad.HasUnreadableBirth(animal) || bad.IsNotBelieved(animal) || IsUnreadable(animal) || SpeakAgainstEachOther(animal);

    public override bool Is(int animal, int day)
    {
        if (bad.HasUnreadableBirth(animal) || IsUnreadable(animal) || SpeakAgainstEachOther(animal))
        {
            return true;
        }

        var to = days.Herd.RecordedParity[animal] >= 0 ? Math.Max(day, days.Herd.DayOfParity(animal)) : day;
        return calving is { } kind && (bad.HasGap(animal, kind, Day.Start, to) || bad.IsNotBelieved(animal, kind, Day.Start, to));
    }

    private bool IsUnreadable(int animal) =>
        days.Herd.RecordedParity[animal] < -1 || (days.Herd.RecordedParity[animal] >= 0 && days.Herd.DayOfParity(animal) <= Day.Start);

    private bool SpeakAgainstEachOther(int animal) => new Parities(days, calving).SpeakAgainstEachOther(animal);
}
