namespace Byrelaw.Language.Binding;

/// <summary>A <c>define</c> on its way to the rulebook.</summary>
internal sealed class DefineEntry(string name, Block block, RuleFile file)
{
    public string Name => name;

    public Block Block => block;

    public RuleFile File => file;

    public SourceSpan Span => block.Span;

    /// <summary>The defines it uses, by the names in its conditions.</summary>
    public List<DefineEntry> Uses { get; } = [];

    /// <summary>Its place in the rulebook, once ordered; -1 before.</summary>
    public int Index { get; set; } = -1;

    /// <summary>How many defines stand in the longest chain from it, itself included.</summary>
    public int Depth { get; set; } = 1;

    public bool IsBroken { get; set; }

    public Condition? Condition { get; set; }
}
