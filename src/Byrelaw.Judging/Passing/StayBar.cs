namespace Byrelaw.Judging.Passing;

/// <summary>Of a condition about which mob she is in: what says so contradicts itself, or cannot be read.</summary>
internal sealed class StayBar(HerdDays days, Bar own) : Bar
{
    public override bool May(int animal) => own.May(animal) || Array.Exists(days.Herd.Mobs.Mob, mob => mob == MobStays.NotKnown);

    public override bool Is(int animal, int day) =>
        own.Is(animal, day) || (days.Herd.Mobs.StayAt(animal, day) is var stay and >= 0 && days.Herd.Mobs.Mob[stay] == MobStays.NotKnown);
}
