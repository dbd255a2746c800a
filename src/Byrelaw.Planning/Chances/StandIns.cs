using MathNet.Numerics.LinearAlgebra;

namespace Byrelaw.Planning.Chances;

/// <summary>
/// A few values that stand in for all that an uncertain number may be, each with its weight: Gauss's rules. An average over n of them
/// is exact for every polynomial up to the power 2n − 1, so a handful does for the smooth curves met here.
/// </summary>
/// <remarks>
/// The values are the eigenvalues of the matrix of the orthogonal polynomials' recurrence, the weights the squares of the first
/// components of its eigenvectors (Golub and Welsch 1969, Mathematics of Computation 23:221-230; from memory).
/// </remarks>
internal static class StandIns
{
    /// <summary>For a share: Jacobi's polynomials, on 0 to 1.</summary>
    public static IReadOnlyList<(double Weight, double Value)> ForRate(Rate rate, int cases)
    {
        if (rate.IsExact || cases == 1)
        {
            return [(1, rate.Share)];
        }

        var (low, high) = ((rate.Share * rate.Weight!.Value) - 1, ((1 - rate.Share) * rate.Weight.Value) - 1);
        var sum = low + high;
        return Solve(
            cases,
            k => 0.5 + (k == 0 ? (low - high) / (2 * (sum + 2)) : ((low * low) - (high * high)) / (2 * ((2 * k) + sum) * ((2 * k) + sum + 2))),
            k => k == 1
                ? (1 + low) * (1 + high) / ((2 + sum) * (2 + sum) * (3 + sum))
                : k * (k + low) * (k + high) * (k + sum) / (((2 * k) + sum) * ((2 * k) + sum) * ((2 * k) + sum + 1) * ((2 * k) + sum - 1)));
    }

    /// <summary>For a positive number with this mean and variance: Laguerre's polynomials.</summary>
    public static IReadOnlyList<(double Weight, double Value)> ForGamma(double mean, double variance, int cases)
    {
        var (shape, scale) = (mean * mean / variance, variance / mean);
        return Solve(cases, k => scale * ((2 * k) + shape), k => scale * scale * k * (k + shape - 1));
    }

    private static (double Weight, double Value)[] Solve(int cases, Func<int, double> diagonal, Func<int, double> beside)
    {
        var matrix = Matrix<double>.Build.Dense(cases, cases);
        for (var k = 0; k < cases; k++)
        {
            matrix[k, k] = diagonal(k);
            if (k > 0)
            {
                matrix[k, k - 1] = matrix[k - 1, k] = Math.Sqrt(beside(k));
            }
        }

        var solved = matrix.Evd(Symmetricity.Symmetric);
        return [.. Enumerable.Range(0, cases).Select(i => (Math.Pow(solved.EigenVectors[0, i], 2), solved.EigenValues[i].Real))];
    }
}
