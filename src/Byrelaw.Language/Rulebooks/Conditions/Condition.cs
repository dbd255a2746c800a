namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>
/// Something that is true, false or not known of an animal on a day. A kind of condition carries its parts: it says once, in
/// <see cref="Make"/>, what it is made of, and everything that walks through conditions, changes a part of them or asks which
/// records, dates and numbers they hold goes through that.
/// </summary>
public abstract record Condition
{
    /// <summary>With no windows and nothing written inside it.</summary>
    protected Condition()
    {
    }

    /// <summary>With windows.</summary>
    protected Condition(ImmutableArray<Window> windows) => Windows = windows;

    /// <summary>With conditions written inside it.</summary>
    protected Condition(ImmutableArray<Condition> items) => Items = items;

    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>Which days it looks at, all of which must hold: none, one or two; none for a kind that has none.</summary>
    public ImmutableArray<Window> Windows { get; init; } = [];

    /// <summary>The conditions written inside it; a define that it names is none of them.</summary>
    public ImmutableArray<Condition> Items { get; init; } = [];

    /// <summary>What it is about, in a few words: <c>heat or mating</c>.</summary>
    public abstract string Subject { get; }

    /// <summary>What the thing found is held to; null where it is no count, time or number.</summary>
    public abstract Demand? Demand { get; }

    /// <summary>Whether her answer rests on other animals too, of her mob or the herd.</summary>
    public virtual bool LooksAtOthers => false;

    /// <summary>The same condition with others in the place of its parts; null where it cannot be said with those.</summary>
    public Condition? With(OtherParts others)
    {
        ArgumentNullException.ThrowIfNull(others);
        return Make(others) is { } made && OtherParts.All(Windows, others.Window) is { } windows
            ? windows == Windows ? made : made with { Windows = windows }
            : null;
    }

    /// <summary>Asks for each of its parts but the windows, in the order of reading, and is made of what stands there then.</summary>
    protected abstract Condition? Make(OtherParts others);
}
