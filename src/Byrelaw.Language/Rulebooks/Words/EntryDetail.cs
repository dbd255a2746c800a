namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>What more is known of an entry: by which method she was scanned, which bull served her. A column of its name.</summary>
/// <param name="Name">Declared spelling; the kind's own: another kind may have a detail of this name that means something else.</param>
/// <param name="Declared">Where.</param>
public sealed record EntryDetail(string Name, SourceSpan Declared)
{
    /// <summary>What its value looks like; a score is a <see cref="FactType.Number"/> with a <see cref="Scale"/>.</summary>
    public FactType Type { get; init; }

    /// <summary>Declared values of a <see cref="FactType.OneOf"/> detail; empty for the others.</summary>
    public ImmutableArray<string> Values { get; init; } = [];

    /// <summary>The unit of an <see cref="FactType.Amount"/> detail; null for the others.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The scale of a score; null for the others.</summary>
    public Scale? Scale { get; init; }

    /// <summary>The place in <see cref="Values"/> that a blank cell counts as; -1 where blank is not known.</summary>
    public int BlankIs { get; init; } = -1;
}
