namespace Byrelaw.Language.Reasoning;

/// <summary>
/// Quantities of which each may be held against each, such as how often she was in heat in the last 30 days, in the last 60, and so
/// on: one that counts all that another counts is at least as much. There may be a thousand; what holds between them is worked out when they are
/// spoken of together.
/// </summary>
/// <remarks>
/// Most stand in a row in which each counts all that those before it do (the last 30 days, the last 31). Then only neighbours
/// are told, and of another row the greatest that is counted whole and the least that counts it whole: the rest follows.
/// </remarks>
/// <param name="number">Which family it is, counted from 0.</param>
/// <param name="contains">Whether the first counts all that the second does.</param>
/// <param name="rowOf">The row that one stands in, and its place there.</param>
internal sealed class Family(int number, Func<int, int, bool> contains, Func<int, (string Row, long Place)> rowOf)
{
    // Of a thousand there are half a million pairs, and those that have been spoken of are seldom spoken of again.
    private const int MostKnown = 4096;

    // Fewer than this are held each against each.
    private const int Few = 6;

    private readonly Dictionary<(int, int), Bound[]> _known = [];

    /// <summary>Which family it is, counted from 0.</summary>
    public int Number => number;

    /// <summary>Adds what holds between some of them for every animal.</summary>
    /// <param name="members">Each once.</param>
    /// <param name="bounds">Takes it.</param>
    /// <returns>How often two were held against each other.</returns>
    public int Add(List<int> members, List<Bound> bounds)
    {
        if (members.Count <= Few)
        {
            for (var at = 1; at < members.Count; at++)
            {
                for (var before = 0; before < at; before++)
                {
                    bounds.AddRange(Between(members[before], members[at]));
                }
            }

            return members.Count * members.Count;
        }

        var steps = 0;
        var rows = members.GroupBy(member => rowOf(member).Row, StringComparer.Ordinal).Select(row => row.OrderBy(member => rowOf(member).Place).ToArray()).ToList();
        foreach (var row in rows)
        {
            for (var at = 1; at < row.Length; at++)
            {
                bounds.AddRange(Between(row[at - 1], row[at]));
            }

            foreach (var other in rows.Where(other => other != row))
            {
                foreach (var member in row)
                {
                    var counted = First(other, one => !contains(member, one)) - 1;
                    if (counted >= 0)
                    {
                        bounds.Add(Longer(member, other[counted]));
                    }
                }
            }

            steps += row.Length * rows.Count;
        }

        return steps;
    }

    /// <summary>The first place in a row of which it holds; of all after it, it holds too. Behind the row where it holds of none.</summary>
    private static int First(int[] row, Func<int, bool> holds)
    {
        var (low, high) = (0, row.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(row[middle]) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private Bound[] Between(int one, int other)
    {
        if (!_known.TryGetValue((one, other), out var bounds))
        {
            if (_known.Count >= MostKnown)
            {
                _known.Clear();
            }

            _known[(one, other)] = bounds = [.. contains(one, other) ? [Longer(one, other)] : Array.Empty<Bound>(), .. contains(other, one) ? [Longer(other, one)] : Array.Empty<Bound>()];
        }

        return bounds;
    }

    /// <summary>One is at least as much as another.</summary>
    private static Bound Longer(int one, int other) => Bound.Longer(one, other, default, null);
}
