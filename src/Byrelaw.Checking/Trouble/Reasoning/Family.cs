namespace Byrelaw.Checking.Trouble.Reasoning;

/// <summary>
/// Quantities of which each may be held against each, such as how often she was in heat in the last 30 days, in the last 60, and so
/// on. There may be a thousand, but only few are spoken of together: what holds between two is worked out when they are.
/// </summary>
/// <param name="number">Which family it is, counted from 0.</param>
/// <param name="between">What holds of two of them for every animal.</param>
internal sealed class Family(int number, Func<int, int, IEnumerable<Bound>> between)
{
    // Of a thousand there are half a million twos, and those that have been spoken of are seldom spoken of again.
    private const int MostKnown = 4096;

    private readonly Dictionary<(int, int), Bound[]> _known = [];

    /// <summary>Which family it is, counted from 0.</summary>
    public int Number => number;

    /// <summary>What holds of two of them for every animal.</summary>
    public Bound[] Between(int one, int other)
    {
        if (!_known.TryGetValue((one, other), out var bounds))
        {
            if (_known.Count >= MostKnown)
            {
                _known.Clear();
            }

            _known[(one, other)] = bounds = [.. between(one, other)];
        }

        return bounds;
    }
}
