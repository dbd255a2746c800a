namespace Byrelaw.Planning.Tests.Naming;

/// <summary>Tries every assignment of animals to places, and keeps the best: what is gained, compared first number by first number; of equals the smallest numbers, session by session.</summary>
internal static class AllOfThem
{
    public static int[] Best(long[]?[][] gains, int[] places, int length)
    {
        int[]? best = null;
        foreach (var at in Every(gains, places, [.. Enumerable.Repeat(-1, gains.Length)], 0))
        {
            if (best is null || IsBetter(at, best, gains, places.Length, length))
            {
                best = [.. at];
            }
        }

        return best!;
    }

    private static IEnumerable<int[]> Every(long[]?[][] gains, int[] places, int[] at, int animal)
    {
        if (animal == gains.Length)
        {
            yield return at;
            yield break;
        }

        for (var session = -1; session < places.Length; session++)
        {
            if (session < 0 || (gains[animal][session] is not null && at[..animal].Count(one => one == session) < places[session]))
            {
                at[animal] = session;
                foreach (var all in Every(gains, places, at, animal + 1))
                {
                    yield return all;
                }
            }
        }
    }

    private static bool IsBetter(int[] one, int[] other, long[]?[][] gains, int sessions, int length)
    {
        for (var part = 0; part < length; part++)
        {
            if (Sum(one, part) != Sum(other, part))
            {
                return Sum(one, part) > Sum(other, part);
            }
        }

        for (var session = 0; session < sessions; session++)
        {
            var (a, b) = (In(one, session), In(other, session));
            for (var i = 0; i < Math.Min(a.Count, b.Count); i++)
            {
                if (a[i] != b[i])
                {
                    return a[i] < b[i];
                }
            }
        }

        return false;

        long Sum(int[] at, int part) => at.Select((session, animal) => session < 0 ? 0 : gains[animal][session]![part]).Sum();

        static List<int> In(int[] at, int session) => [.. Enumerable.Range(0, at.Length).Where(animal => at[animal] == session)];
    }
}
