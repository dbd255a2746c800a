namespace Byrelaw.Judging.Passing;

/// <summary>Of a condition that hangs on others too: anything of theirs that cannot be relied on keeps it open for all.</summary>
/// <param name="isBad">Whether there is any.</param>
/// <param name="own">What is hers.</param>
internal sealed class HerdBar(bool isBad, Bar own) : Bar
{
    public override bool May(int animal) => isBad || own.May(animal);

    public override bool Is(int animal, int day) => isBad || own.Is(animal, day);
}
