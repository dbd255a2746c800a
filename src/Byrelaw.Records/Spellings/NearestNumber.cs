namespace Byrelaw.Records.Spellings;

/// <summary>Finds the animal that was perhaps meant, without going through the whole herd.</summary>
internal static class NearestNumber
{
    /// <summary>No number is longer.</summary>
    public const int Longest = 20;
    /// <summary>Programs fill numbers up with so many zeros at most.</summary>
    private const int MostZeros = 14;

    /// <summary>The one known number that differs by zeros in front only; null where there is none, or several.</summary>
    public static string? ButForZeros(string text, AnimalPlaces animals)
    {
        var plain = text.AsSpan().TrimStart('0');
        Span<byte> padded = stackalloc byte[MostZeros + (4 * Longest)];
        padded[..MostZeros].Fill((byte)'0');
        if (plain.IsEmpty || text.Length > Longest || !Encoding.UTF8.TryGetBytes(plain, padded[MostZeros..], out var length))
        {
            return null;
        }

        int? found = null;
        for (var zeros = 0; zeros <= MostZeros; zeros++)
        {
            if (zeros == text.Length - plain.Length || !animals.TryFind(padded[(MostZeros - zeros)..(MostZeros + length)], out _))
            {
                continue;
            }

            if (found is not null)
            {
                return null;
            }

            found = zeros;
        }

        return found is { } only ? $"{new string('0', only)}{plain}" : null;
    }

    /// <summary>The one known number that is one slip of the pen away; null where there is none, or several.</summary>
    /// <remarks>Files with hundreds of thousands of strange numbers come up, so nothing is made of a slip but on the stack, and none is tried that no number is like.</remarks>
    public static string? To(string text, AnimalPlaces animals)
    {
        if (text.Length > Longest)
        {
            return null;
        }

        string? only = null;
        return IsStillOne(text.AsSpan().TrimStart('0'), animals, ref only) && IsStillOne(text.ToUpperInvariant(), animals, ref only) && IsStillOne(text.ToLowerInvariant(), animals, ref only)
            && IsStillOne(text.Replace(" ", "", StringComparison.Ordinal), animals, ref only) && IsOneWithLess(text, animals, ref only) && IsOneWithAnother(text, animals, ref only)
            && IsOneWithMore(text, animals, ref only) ? only : null;
    }

    private static bool IsOneWithLess(string text, AnimalPlaces animals, ref string? only)
    {
        Span<char> slip = stackalloc char[Longest];
        for (var i = 0; i < text.Length && animals.HasLength(text.Length - 1); i++)
        {
            text.AsSpan(0, i).CopyTo(slip);
            text.AsSpan(i + 1).CopyTo(slip[i..]);
            if (!IsStillOne(slip[..(text.Length - 1)], animals, ref only))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>One sign is another, or two neighbours have changed places.</summary>
    private static bool IsOneWithAnother(string text, AnimalPlaces animals, ref string? only)
    {
        Span<char> slip = stackalloc char[Longest];
        text.CopyTo(slip);
        slip = slip[..text.Length];
        for (var i = 0; i < text.Length && animals.HasLength(text.Length); i++)
        {
            foreach (var sign in animals.Signs)
            {
                slip[i] = sign;
                if (!IsStillOne(slip, animals, ref only))
                {
                    return false;
                }
            }

            slip[i] = text[i];
            if (i + 1 < text.Length)
            {
                (slip[i], slip[i + 1]) = (text[i + 1], text[i]);
                if (!IsStillOne(slip, animals, ref only))
                {
                    return false;
                }

                (slip[i], slip[i + 1]) = (text[i], text[i + 1]);
            }
        }

        return true;
    }

    private static bool IsOneWithMore(string text, AnimalPlaces animals, ref string? only)
    {
        Span<char> slip = stackalloc char[Longest + 1];
        for (var i = 0; i <= text.Length && animals.HasLength(text.Length + 1); i++)
        {
            text.AsSpan(0, i).CopyTo(slip);
            text.AsSpan(i).CopyTo(slip[(i + 1)..]);
            foreach (var sign in animals.Signs)
            {
                slip[i] = sign;
                if (!IsStillOne(slip[..(text.Length + 1)], animals, ref only))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>False where this is a second number that is known.</summary>
    private static bool IsStillOne(ReadOnlySpan<char> slip, AnimalPlaces animals, ref string? only)
    {
        Span<byte> bytes = stackalloc byte[(Longest + 1) * 3];
        if (slip.Length > Longest + 1 || !animals.TryFind(bytes[..Encoding.UTF8.GetBytes(slip, bytes)], out _))
        {
            return true;
        }

        only ??= slip.ToString();
        return slip.SequenceEqual(only);
    }
}
