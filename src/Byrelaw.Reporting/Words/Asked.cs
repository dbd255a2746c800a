namespace Byrelaw.Reporting.Words;

/// <summary>
/// One thing to find out, by one way or another: a scan from 8 October, or a test by hand from 22 October, are one thing. Results of one test that several
/// conditions ask for are got by one result that is late enough for all.
/// </summary>
/// <param name="Ways">Any of them will do.</param>
public sealed record Asked(ImmutableArray<Missing> Ways)
{
    /// <summary>The way that can be gone first.</summary>
    public Missing First => Ways[0];

    /// <summary>What is missing, as things to find out, in order.</summary>
    public static IReadOnlyList<Asked> Of(IEnumerable<Missing> missing)
    {
        var asked = new List<Asked>();
        foreach (var one in missing)
        {
            var place = one.Reason == MissingReason.NoResult ? asked.FindIndex(other => IsOneThing(other.First, one)) : -1;
            if (place < 0)
            {
                asked.Add(new Asked([one]));
            }
            else
            {
                asked[place] = new Asked([.. asked[place].Ways, one]);
            }
        }

        return [.. asked.Select(one => one.Ways.Length == 1 ? one : new Asked(Fewest(one.Ways)))];
    }

    /// <summary>Whether one thing found out is both: results of one test are.</summary>
    public static bool IsOneThing(Missing one, Missing other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one == other || (one.Reason == MissingReason.NoResult && other.Reason == MissingReason.NoResult && one.Subject == other.Subject);
    }

    /// <summary>Each way once, from the day from which it will do for all; a result by no matter which method is one by any of the others.</summary>
    private static ImmutableArray<Missing> Fewest(ImmutableArray<Missing> ways)
    {
        var each = ways.GroupBy(way => way.Filter, StringComparer.Ordinal).Select(Together).ToList();
        if (each.Count > 1)
        {
            each.RemoveAll(way => way.Filter.Length == 0);
        }

        // One that can no longer be gone in time is none, while another can.
        var inTime = each.FindAll(way => !(way.From > way.To));
        return [.. (inTime.Count > 0 ? inTime : each).OrderBy(way => way.From ?? LocalDate.MinIsoValue)];
    }

    private static Missing Together(IEnumerable<Missing> ways)
    {
        var all = ways.ToList();
        var together = all[0] with { From = all.Max(way => way.From), To = all.Min(way => way.To) };
        return together.From > together.To ? all[0] : together;
    }
}
