using System.Numerics;
using System.Runtime.InteropServices;

namespace Byrelaw.Planning.Chances;

/// <summary>Rows of chances, worked out several places at a time.</summary>
internal static class Rows
{
    /// <summary>Adds so many times one row to another, place by place.</summary>
    /// <param name="to">At least as long.</param>
    /// <param name="row">Is added.</param>
    /// <param name="times">So many times.</param>
    public static void Add(Span<double> to, ReadOnlySpan<double> row, double times)
    {
        var sums = MemoryMarshal.Cast<double, Vector<double>>(to[..row.Length]);
        var many = MemoryMarshal.Cast<double, Vector<double>>(row);
        var each = new Vector<double>(times);
        for (var i = 0; i < many.Length; i++)
        {
            sums[i] += each * many[i];
        }

        for (var i = many.Length * Vector<double>.Count; i < row.Length; i++)
        {
            to[i] += times * row[i];
        }
    }

    /// <summary>The chances of each count for one animal more, in place: some of each place move one up.</summary>
    /// <param name="row">The chances of each count among the animals seen, and one place more that is 0.</param>
    /// <param name="first">The chance that the next one succeeds, where none has.</param>
    /// <param name="step">By how much that chance rises with each that has.</param>
    public static void AddOne(Span<double> row, double first, double step)
    {
        // From the top down, so that what moves up comes from a place that is still as it was.
        var (count, width) = (row.Length, Vector<double>.Count);
        var indices = Vector<double>.Indices * step;
        for (; count > width; count -= width)
        {
            var from = count - width;
            var moves = new Vector<double>(first + (step * from)) + indices;
            var (here, below) = (new Vector<double>(row[from..]), new Vector<double>(row[(from - 1)..]));
            (here - (here * moves) + (below * (moves - new Vector<double>(step)))).CopyTo(row[from..]);
        }

        for (var i = count - 1; i > 0; i--)
        {
            row[i] += (row[i - 1] * (first + (step * (i - 1)))) - (row[i] * (first + (step * i)));
        }

        row[0] *= 1 - first;
    }
}
