namespace Byrelaw.Loading;

/// <summary>Finds the animal number that was probably meant.</summary>
public static class NearestNumber
{
    /// <summary>The number with the fewest slips between the two; null where none is near.</summary>
    public static string? To(string asked, IEnumerable<string> numbers)
    {
        var most = Math.Max(1, asked.Length / 3);
        return numbers.Select(number => (Number: number, Slips: Slips(asked, number, most)))
            .Where(one => one.Slips <= most).OrderBy(one => one.Slips).Select(one => one.Number).FirstOrDefault();
    }

    /// <summary>Letters to put in, take out, change or swap with their neighbour; more than <paramref name="most"/> is not counted out.</summary>
    private static int Slips(string a, string b, int most)
    {
        if (Math.Abs(a.Length - b.Length) > most || a.Length > 64)
        {
            return int.MaxValue;
        }

        var (before, last, now) = (new int[b.Length + 1], Enumerable.Range(0, b.Length + 1).ToArray(), new int[b.Length + 1]);
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var same = char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1;
                now[j] = Math.Min(Math.Min(now[j - 1], last[j]) + 1, last[j - 1] + same);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    now[j] = Math.Min(now[j], before[j - 2] + 1);
                }
            }

            (before, last, now) = (last, now, before);
        }

        return last[b.Length];
    }
}
