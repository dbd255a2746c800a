namespace Byrelaw.Planning.Naming;

/// <summary>What is gained by an assignment: whole numbers, of which the first counts before the second, the second before the third.</summary>
internal readonly struct Gain(long[] parts) : IComparable<Gain>
{
    private readonly long[] _parts = parts;

    /// <summary>Nothing gained.</summary>
    public static Gain Nothing(int length) => new(new long[length]);

    /// <summary>Whether nothing is gained or lost.</summary>
    public bool IsNothing => Array.TrueForAll(_parts, part => part == 0);

    /// <summary>Both together.</summary>
    public static Gain operator +(Gain one, Gain other) => With(one, other, 1);

    /// <summary>The one without the other.</summary>
    public static Gain operator -(Gain one, Gain other) => With(one, other, -1);

    /// <inheritdoc/>
    public int CompareTo(Gain other)
    {
        for (var i = 0; i < _parts.Length; i++)
        {
            if (_parts[i] != other._parts[i])
            {
                return _parts[i] < other._parts[i] ? -1 : 1;
            }
        }

        return 0;
    }

    private static Gain With(Gain one, Gain other, long sign)
    {
        var sum = new long[one._parts.Length];
        for (var i = 0; i < sum.Length; i++)
        {
            sum[i] = one._parts[i] + (sign * other._parts[i]);
        }

        return new(sum);
    }
}
