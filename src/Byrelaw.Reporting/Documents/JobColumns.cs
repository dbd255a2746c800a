namespace Byrelaw.Reporting.Documents;

/// <summary>One job: what, for whom, by when.</summary>
/// <param name="HasBox">Whether it can be done now; what it is too early for stands there without a box.</param>
/// <param name="What">The job.</param>
/// <param name="For">The animals, and what it settles.</param>
/// <param name="When">Its days.</param>
public sealed record JobLine(bool HasBox, string What, Wording For, string When);

/// <summary>The jobs of one place.</summary>
/// <param name="Heading">The place.</param>
/// <param name="Jobs">In order.</param>
public sealed record JobColumn(string Heading, ImmutableArray<JobLine> Jobs);

/// <summary>Jobs by the place they are done in, side by side.</summary>
/// <param name="Columns">Each with at least one job.</param>
public sealed record JobColumns(ImmutableArray<JobColumn> Columns) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => Columns.SelectMany<JobColumn, Element>(column =>
    [
        new Heading(3, column.Heading),
        new Listing([.. column.Jobs.Select<JobLine, Wording>(job => $"{(job.HasBox ? "☐ " : "")}{Wording.Bold(job.What)} {job.For} {Wording.Faint(job.When)}")], IsNumbered: false),
    ]);
}
