namespace Byrelaw.Reporting.Documents;

/// <summary>A column of a table. A heading turns into one by itself.</summary>
/// <param name="Heading">What stands above it; empty for nothing.</param>
/// <param name="IsNumber">Whether a terminal aligns it to the right.</param>
/// <param name="Least">How wide it is on a terminal at least, in signs.</param>
/// <param name="Most">How far its cells are filled up on a terminal at most; a longer one pushes its row on.</param>
/// <param name="Before">Blanks before it on a terminal.</param>
public sealed record Column(string Heading, bool IsNumber = false, int Least = 0, int Most = int.MaxValue, int Before = 2)
{
    /// <summary>A column of words with this heading.</summary>
    public static implicit operator Column(string heading) => new(heading);
}
