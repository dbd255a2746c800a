namespace Byrelaw.Language.Binding.Rules;

/// <summary>A rule or a preference on its way through the layers: exactly one of the two is set.</summary>
internal sealed class RuleEntry(string name, RuleFile file, SourceSpan span)
{
    public string Name => name;

    /// <summary>The file that it stands in, changes apart.</summary>
    public RuleFile File => file;

    /// <summary>The line that it starts on.</summary>
    public SourceSpan Span => span;

    /// <summary>False for what was agreed after the day as known on which the files are read.</summary>
    public bool Exists { get; set; } = true;

    public Rule? Rule { get; set; }

    public Prefer? Prefer { get; set; }

    /// <summary>Set while a layer drops it.</summary>
    public Drop? Drop { get; set; }

    /// <summary>The latest layers that touched it, those that another layer lies over left out. More than one: they conflict.</summary>
    public List<Layer> Tips { get; } = [];

    /// <summary>Whether a file other than its own changed it.</summary>
    public bool IsChangedElsewhere { get; set; }

    public string List => Rule?.List ?? Prefer!.List;

    /// <summary>Nobody passes it any more.</summary>
    public void Break()
    {
        Rule = Rule is null ? null : Rule with { IsBroken = true };
        Prefer = Prefer is null ? null : Prefer with { IsBroken = true };
    }
}

/// <summary>What one file does to a rule.</summary>
/// <param name="File">Which file.</param>
/// <param name="Span">Where.</param>
/// <param name="Lines">The lines it states; <c>drop</c> for a drop.</param>
internal sealed record Layer(RuleFile File, SourceSpan Span, HashSet<string> Lines);
