namespace Byrelaw.Judging.Passing;

/// <summary>
/// Tells of one condition that is not known whether something is there that it may hang on: a row that cannot be read and may be hers, a
/// result that is not known, vague or one of several that differ, a contradiction, a cell that cannot be read, a promise that is not believed.
/// </summary>
internal abstract class Bar
{
    /// <summary>Whether there is anything of the sort, whatever the day: false for most animals, and quick.</summary>
    public abstract bool May(int animal);

    /// <summary>Whether it stands in what the condition looks at on a day.</summary>
    public abstract bool Is(int animal, int day);
}
