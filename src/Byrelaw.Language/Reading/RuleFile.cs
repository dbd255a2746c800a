namespace Byrelaw.Language.Reading;

/// <summary>One file on its way to the rulebook.</summary>
/// <param name="Source">Its text.</param>
internal sealed record RuleFile(SourceFile Source)
{
    /// <summary>Its lines; none where its bytes are no text.</summary>
    public IReadOnlyList<LogicalLine> Lines { get; init; } = [];

    /// <summary>Its blocks, once read.</summary>
    public IReadOnlyList<Block> Blocks { get; set; } = [];

    /// <summary>The files it uses, in order.</summary>
    public List<RuleFile> Uses { get; } = [];

    /// <summary>All files under it: those it uses, those they use, and so on; not itself.</summary>
    public HashSet<RuleFile> Under { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Holiday lists that it names, by their written paths; null where there is no such file.</summary>
    public Dictionary<string, (string Shown, byte[] Bytes)?> HolidayLists { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether the person asked for this file; the others are used.</summary>
    public bool IsRoot { get; init; }

    /// <summary>What is wrong in it.</summary>
    public List<Diagnostic> Problems { get; } = [];

    /// <summary>Whether what a file says reaches this one: it is this one, or lies under it.</summary>
    public bool Sees(RuleFile other) => ReferenceEquals(this, other) || Under.Contains(other);

    /// <summary>Files are told apart by being another object.</summary>
    public bool Equals(RuleFile? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
