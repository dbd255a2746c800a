namespace Byrelaw.Judging.Herdmates;

/// <summary>Animals with their values, some without.</summary>
internal sealed class ValueGroup
{
    private readonly List<double> _values = [];

    public int WithoutValue { get; private set; }

    public int Count => _values.Count + WithoutValue;

    public void Add(double? value)
    {
        if (value is { } known)
        {
            _values.Add(known);
        }
        else
        {
            WithoutValue++;
        }
    }

    public void Sort() => _values.Sort();

    /// <summary>How many known values are greater than one.</summary>
    public int Greater(double value)
    {
        int low = 0, high = _values.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (_values[middle] > value)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return _values.Count - low;
    }
}
