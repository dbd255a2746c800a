namespace Byrelaw.Language.Syntax;

/// <summary>A name: one or more words.</summary>
/// <param name="Text">As written, one space between words.</param>
internal sealed record NameSyntax(string Text) : SyntaxNode
{
    /// <summary>Where it is a kind: which entries of it are meant.</summary>
    public ImmutableArray<Conditions.FilterSyntax> Filters { get; init; } = [];

    /// <summary>Where filters follow: the name without them; else null.</summary>
    public NameSyntax? Alone { get; init; }

    /// <summary>The name without its filters.</summary>
    internal NameSyntax Named => Alone ?? this;

    /// <summary>Joins the parts of a name.</summary>
    public static NameSyntax Of(Token first, IEnumerable<Token> more)
    {
        var parts = more.Prepend(first).ToList();
        return new NameSyntax(string.Join(' ', parts.Select(part => part.Text))) { Span = first.Span.To(parts[^1].Span) };
    }
}

/// <summary>A text in quotes.</summary>
internal sealed record TextSyntax(string Value) : SyntaxNode;

/// <summary>A number.</summary>
internal sealed record NumberSyntax(double Value) : SyntaxNode;

/// <summary>A day.</summary>
internal sealed record DateSyntax(LocalDate Value) : SyntaxNode;

/// <summary>A unit as written after a number or <c>in</c>.</summary>
internal sealed record UnitSyntax(string Text) : SyntaxNode;

/// <summary>A length of time, such as <c>56 days</c>. The count is checked when it is bound.</summary>
internal sealed record DurationSyntax(NumberSyntax Count, TimeUnit Unit) : SyntaxNode;
