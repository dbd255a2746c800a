namespace Byrelaw.Records.Spellings;

/// <summary>
/// Finds an animal's place in the herd by her number as it stands in a file. Plain whole numbers that
/// lie near each other, as on most farms, are looked up in one small array; all others by their spelling.
/// </summary>
internal sealed class AnimalPlaces
{
    private const int MostDigits = 9;
    private const int None = -1;
    private readonly int[] _byNumber;
    private readonly int _lowest;
    private readonly SpellingTable _others;
    private ulong _lengths;

    /// <summary>Takes the numbers in the order of the herd, and further numbers of animals with their places.</summary>
    public AnimalPlaces(string[] numbers, IReadOnlyList<(string Number, int Place)>? also = null)
    {
        also ??= [];
        var (lowest, highest, plain) = (int.MaxValue, 0, 0);
        foreach (var text in numbers.Concat(also.Select(one => one.Number)))
        {
            if (TryPlain(text, out var number))
            {
                (lowest, highest, plain) = (Math.Min(lowest, number), Math.Max(highest, number), plain + 1);
            }
        }

        var isDense = plain > 0 && highest - lowest < (4L * plain) + 1024;
        _lowest = lowest;
        _byNumber = isDense ? new int[highest - lowest + 1] : [];
        _others = new SpellingTable(isDense ? numbers.Length + also.Count - plain : numbers.Length + also.Count);
        Array.Fill(_byNumber, None);
        for (var place = 0; place < numbers.Length; place++)
        {
            Add(numbers[place], place, isDense);
        }

        foreach (var (number, place) in also)
        {
            Add(number, place, isDense);
        }

        Signs = SignsOf(numbers.Concat(also.Select(one => one.Number)));
    }

    private static string SignsOf(IEnumerable<string> numbers)
    {
        Span<bool> stands = stackalloc bool['Z' + 1];
        foreach (var number in numbers)
        {
            foreach (var sign in number)
            {
                if (sign <= 'Z')
                {
                    stands[sign] = true;
                }
            }
        }

        var signs = new StringBuilder();
        for (var sign = '0'; sign <= 'Z'; sign++)
        {
            if (stands[sign] && char.IsAsciiLetterOrDigit(sign))
            {
                signs.Append(sign);
            }
        }

        return signs.ToString();
    }

    /// <summary>The digits and capital letters that stand in numbers of the herd.</summary>
    public string Signs { get; }

    /// <summary>Whether a number of the herd has so many signs.</summary>
    public bool HasLength(int length) => length < 64 && (_lengths & (1UL << length)) != 0;

    private void Add(string text, int place, bool isDense)
    {
        _lengths |= text.Length < 64 ? 1UL << text.Length : 0;
        if (isDense && TryPlain(text, out var number))
        {
            _byNumber[number - _lowest] = place;
        }
        else
        {
            _others.Set(Encoding.UTF8.GetBytes(text), place);
        }
    }

    /// <summary>The animal's place; false where there is no such animal.</summary>
    public bool TryFind(ReadOnlySpan<byte> spelling, out int place)
    {
        if (_byNumber.Length > 0 && TryPlain(spelling, out var number))
        {
            var index = number - _lowest;
            place = (uint)index < (uint)_byNumber.Length ? _byNumber[index] : None;
            return place != None;
        }

        return _others.TryFind(spelling, out place);
    }

    /// <summary>A whole number with one way to write it: digits without a zero before them.</summary>
    private static bool TryPlain(ReadOnlySpan<byte> text, out int number)
    {
        number = 0;
        if (text.Length is 0 or > MostDigits || text[0] == '0')
        {
            return false;
        }

        foreach (var c in text)
        {
            var digit = c - '0';
            if ((uint)digit > 9)
            {
                return false;
            }

            number = (number * 10) + digit;
        }

        return true;
    }

    private static bool TryPlain(string text, out int number)
    {
        Span<byte> bytes = stackalloc byte[MostDigits + 1];
        number = 0;
        return text.Length is > 0 and <= MostDigits && Encoding.UTF8.TryGetBytes(text, bytes, out var length) && TryPlain(bytes[..length], out number);
    }
}
