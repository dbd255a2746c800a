namespace Byrelaw.Language.Diagnostics;

/// <summary>How many single slips (a letter too many, too few, another, or two swapped) lie between two words.</summary>
internal static class EditDistance
{
    /// <summary>The distance, or any number above <paramref name="limit"/> where it is larger than that.</summary>
    public static int Between(string a, string b, int limit)
    {
        if (Math.Abs(a.Length - b.Length) > limit)
        {
            return limit + 1;
        }

        var beforeLast = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var current = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            var smallest = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var best = Math.Min(Math.Min(last[j], current[j - 1]) + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    best = Math.Min(best, beforeLast[j - 2] + 1);
                }

                current[j] = best;
                smallest = Math.Min(smallest, best);
            }

            if (smallest > limit)
            {
                return limit + 1;
            }

            (beforeLast, last, current) = (last, current, beforeLast);
        }

        return last[b.Length];
    }
}
