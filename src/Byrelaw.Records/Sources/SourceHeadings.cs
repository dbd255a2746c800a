using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Sources;

/// <summary>Whether the columns are there that a source's lines name: each that is not is told, and those that nobody reads.</summary>
internal sealed class SourceHeadings
{
    // Without these, nobody can tell of whom, of when or of what a row is.
    private static readonly string[] OfEveryRow = ["animal", "date", "kind", "herd"];

    private readonly RecordSource _source;
    private readonly SourceTable _table;
    private readonly Vocabulary _vocabulary;

    private SourceHeadings(RecordSource source, SourceTable table, Vocabulary vocabulary) => (_source, _table, _vocabulary) = (source, table, vocabulary);

    /// <summary>Headings of columns that no line reads, and whose cells tell of calves.</summary>
    public ImmutableArray<string> Telling { get; private set; } = [];

    /// <summary>Whether rows can be read at all.</summary>
    public bool CanBeRead { get; private set; } = true;

    /// <summary>Lines whose own column is not there: what they give is not known of anyone.</summary>
    public ImmutableArray<SourceColumn> Missing { get; private set; } = [];

    /// <summary>Headings of columns that no line reads or leaves out.</summary>
    public ImmutableArray<string> NotRead { get; private set; } = [];

    /// <summary>Looks for all columns.</summary>
    /// <param name="source">What the farm says of the source.</param>
    /// <param name="table">What stands in it.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says of its records.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static SourceHeadings Of(RecordSource source, SourceTable table, Vocabulary vocabulary, RecordKeeping keeping, List<Diagnostic> problems)
    {
        var headings = new SourceHeadings(source, table, vocabulary);
        headings.Look(keeping, problems);
        return headings;
    }

    private void Look(RecordKeeping keeping, List<Diagnostic> problems)
    {
        Missing = [.. _source.Columns.Where(column => IsMissing(column.Heading))];
        CanBeRead = !Missing.Any(column => column.What is LandedTarget landed && OfEveryRow.Contains(landed.Column)) && !_source.RowsLeftOut.Any(row => IsMissing(row.Heading));
        string[] read = [.. _source.HeadingsRead];
        string[] missing = [.. read.Where(IsMissing).Distinct()];
        if (missing.Length > 0)
        {
            problems.Add(SourceFileProblems.NoColumns(_table, [.. missing.Select(heading => (heading, Near(heading)))], CanBeRead));
        }

        // What nobody need look at need not be there.
        string[] beside = [.. read, .. _source.HeadingsReadBeside(keeping.Sources)];
        var known = beside.Concat(_source.ColumnsLeftOut).Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        NotRead = _source.IsAde ? [] : [.. _table.Headings.Where(heading => heading.Length > 0 && !known.Contains(NameFolding.Fold(heading)))];
        var isRead = beside.Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        Telling = _source.IsAde ? [] : [.. ColumnsThatTell.Of(_source, _table, _table.Headings.Where(heading => heading.Length > 0 && !isRead.Contains(NameFolding.Fold(heading))), keeping.UpTo)];
        if (missing.Length == 0 && !NotRead.IsEmpty)
        {
            problems.Add(SourceFileProblems.NotRead(_table, NotRead, [.. NotRead.Where(heading => FloorHeadings.MayBe(heading, _vocabulary) is null && !Telling.Contains(heading))]));
        }
    }

    /// <summary>A heading that is spelt nearly so, or that has the words among its own, as one of headings over several rows.</summary>
    private string? Near(string heading) => NearestName.OnlyOne(heading, _table.Headings)
        ?? (_table.Headings.Where(other => $" {NameFolding.Fold(other)} ".Contains($" {NameFolding.Fold(heading)} ", StringComparison.Ordinal)).ToList() is [var only] ? only : null);

    private bool IsMissing(string heading) => _table.Find(heading) < 0;
}
