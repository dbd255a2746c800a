namespace Byrelaw.Records.Spellings;

/// <summary>Finds the known name that was perhaps meant.</summary>
internal static class NearestName
{
    /// <summary>The one name within two slips of the pen (one in a short name); null where there is none, or several as near.</summary>
    public static string? To(string text, IEnumerable<string> names)
    {
        var folded = NameFolding.Fold(text);
        var most = folded.Length <= 4 ? 1 : 2;
        var nearest = names
            .Select(name => (Name: name, Slips: Slips(folded, NameFolding.Fold(name))))
            .Where(candidate => candidate.Slips <= most)
            .GroupBy(candidate => candidate.Slips)
            .MinBy(group => group.Key);
        return nearest?.Select(candidate => candidate.Name).Distinct().ToArray() is [var only] ? only : null;
    }

    /// <summary>How many letters have to be put in, left out, changed, or swapped with the next.</summary>
    private static int Slips(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 2)
        {
            return int.MaxValue;
        }

        var before = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last, row) = (last, row, before);
        }

        return last[b.Length];
    }
}
