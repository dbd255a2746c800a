namespace Byrelaw.Judging.Passing;

/// <summary>Of her age: her birth stands there, as a month or a year, or cannot be read.</summary>
internal sealed class AgeBar(HerdDays days, BadRecords bad) : Bar
{
    public override bool May(int animal) => bad.HasUnreadableBirth(animal) || days.Herd.BornEarliest[animal] > Day.Start;

    public override bool Is(int animal, int day) => May(animal);
}
