namespace Byrelaw.Judging.Herdmates;

/// <summary>Those who surely belong, and those who may.</summary>
internal sealed class Herdmates
{
    public ValueGroup Sure { get; } = new();

    public ValueGroup Perhaps { get; } = new();

    /// <summary>How many surely belong, and are left out because they have no value.</summary>
    public int LeftOut { get; private set; }

    public void LeaveOut(Truth belongs) => LeftOut += belongs == Truth.True ? 1 : 0;

    public void Add(Truth belongs, double? value)
    {
        if (belongs != Truth.False)
        {
            (belongs == Truth.True ? Sure : Perhaps).Add(value);
        }
    }

    public void Sort()
    {
        Sure.Sort();
        Perhaps.Sort();
    }
}
