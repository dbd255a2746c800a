namespace Byrelaw.Judging.Herdmates;

/// <summary>Those who surely belong, and those who may.</summary>
internal sealed class Herdmates
{
    public ValueGroup Sure { get; } = new();

    public ValueGroup Perhaps { get; } = new();

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
