namespace Byrelaw.Records.Building;

/// <summary>Grows the arrays of something that lasts until the next of its kind, animal by animal.</summary>
internal sealed class Stretches(int animals)
{
    private readonly int[] _starts = new int[animals + 1];
    private readonly List<int> _from = [];
    private readonly List<int> _states = [];
    private readonly List<int> _lines = [];
    private readonly List<int> _kinds = [];
    private int _animal;

    /// <summary>Animal count + 1 places.</summary>
    public int[] Starts => _starts;

    /// <summary>First day of each stretch.</summary>
    public int[] From => [.. _from];

    /// <summary>What it is.</summary>
    public int[] States => [.. _states];

    /// <summary>The line that starts it.</summary>
    public int[] Lines => [.. _lines];

    /// <summary>The kind that starts it.</summary>
    public int[] Kinds => [.. _kinds];

    /// <summary>Adds a stretch of the current animal. One that changes nothing is not added; one on the
    /// same day as the last takes its place.</summary>
    public void Add(int from, int state, int line, int kind = -1)
    {
        var first = _starts[_animal];
        if (_from.Count > first && _from[^1] == from)
        {
            _from.RemoveAt(_from.Count - 1);
            _states.RemoveAt(_states.Count - 1);
            _lines.RemoveAt(_lines.Count - 1);
            _kinds.RemoveAt(_kinds.Count - 1);
        }

        if (_from.Count == first || _states[^1] != state)
        {
            _from.Add(from);
            _states.Add(state);
            _lines.Add(line);
            _kinds.Add(kind);
        }
    }

    /// <summary>What the current animal is on a day, by the stretches added so far.</summary>
    public int CurrentState(int day)
    {
        var i = _from.Count - 1;
        while (_from[i] > day)
        {
            i--;
        }

        return _states[i];
    }

    /// <summary>Goes on to the next animal.</summary>
    public void Next() => _starts[++_animal] = _from.Count;
}
