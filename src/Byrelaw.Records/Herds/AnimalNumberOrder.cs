namespace Byrelaw.Records.Herds;

/// <summary>Orders animal numbers as people do: 99 before 101, B7 before B12.</summary>
public sealed class AnimalNumberOrder : IComparer<string>
{
    /// <summary>The one order.</summary>
    public static readonly AnimalNumberOrder Instance = new();

    private AnimalNumberOrder()
    {
    }

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        ReadOnlySpan<char> a = x, b = y;
        while (!a.IsEmpty && !b.IsEmpty)
        {
            var order = char.IsAsciiDigit(a[0]) && char.IsAsciiDigit(b[0])
                ? CompareDigits(TakeDigits(ref a), TakeDigits(ref b))
                : char.ToUpperInvariant(Take(ref a)).CompareTo(char.ToUpperInvariant(Take(ref b)));
            if (order != 0)
            {
                return order;
            }
        }

        return a.Length != b.Length ? a.Length.CompareTo(b.Length) : string.CompareOrdinal(x, y);
    }

    private static char Take(ref ReadOnlySpan<char> text)
    {
        var first = text[0];
        text = text[1..];
        return first;
    }

    private static ReadOnlySpan<char> TakeDigits(ref ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        var digits = end < 0 ? text : text[..end];
        text = text[digits.Length..];
        return digits;
    }

    private static int CompareDigits(ReadOnlySpan<char> a, ReadOnlySpan<char> b)
    {
        var x = a.TrimStart('0');
        var y = b.TrimStart('0');
        return x.Length != y.Length ? x.Length.CompareTo(y.Length) : x.SequenceCompareTo(y);
    }
}
