using Byrelaw.Planning.Pairing;

namespace Byrelaw.Planning.Tests.Pairing;

/// <summary>Tries every way to pair embryos and recipients, as the design says what is best: number by number, then the first embryo by the smallest number, then the second; a number before none.</summary>
internal static class AllPairings
{
    public static int[] Best(PairWorth?[][] worth, int recipients, (int Embryo, int Recipient)? besides = null)
    {
        int[]? best = null;
        foreach (var at in Every(worth, recipients, new int[worth.Length], 0))
        {
            if ((besides is not { } not || at[not.Embryo] != not.Recipient) && (best is null || IsBetter(at, best, worth)))
            {
                best = [.. at];
            }
        }

        return best!;
    }

    public static long[] Sum(int[] at, PairWorth?[][] worth)
    {
        var sum = new long[5];
        for (var embryo = 0; embryo < at.Length; embryo++)
        {
            if (at[embryo] >= 0)
            {
                var one = worth[embryo][at[embryo]]!.Value;
                long[] parts = [one.Wished, one.Fresh, one.Kept, one.Wanted, one.Points];
                for (var i = 0; i < parts.Length; i++)
                {
                    sum[i] += parts[i];
                }
            }
        }

        return sum;
    }

    private static bool IsBetter(int[] one, int[] other, PairWorth?[][] worth)
    {
        var (a, b) = (Sum(one, worth), Sum(other, worth));
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] != b[i])
            {
                return a[i] > b[i];
            }
        }

        for (var embryo = 0; embryo < one.Length; embryo++)
        {
            if (one[embryo] != other[embryo])
            {
                return other[embryo] < 0 || (one[embryo] >= 0 && one[embryo] < other[embryo]);
            }
        }

        return false;
    }

    private static IEnumerable<int[]> Every(PairWorth?[][] worth, int recipients, int[] at, int embryo)
    {
        if (embryo == worth.Length)
        {
            yield return at;
            yield break;
        }

        for (var recipient = -1; recipient < recipients; recipient++)
        {
            if (recipient < 0 || (worth[embryo][recipient] is not null && !at.AsSpan()[..embryo].Contains(recipient)))
            {
                at[embryo] = recipient;
                foreach (var all in Every(worth, recipients, at, embryo + 1))
                {
                    yield return all;
                }
            }
        }
    }
}
