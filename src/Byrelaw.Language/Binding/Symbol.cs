namespace Byrelaw.Language.Binding;

/// <summary>What a name means. Kinds, facts, defines, spells and dates share one namespace.</summary>
/// <param name="Name">Declared spelling.</param>
/// <param name="Declared">Where; null for a built-in name.</param>
internal abstract record Symbol(string Name, SourceSpan? Declared)
{
    /// <summary>What it is, with its article, as messages say it.</summary>
    public abstract string Sort { get; }
}

/// <summary>An event, a measure or a test.</summary>
internal sealed record KindSymbol(Kind Kind, SourceSpan? At) : Symbol(Kind.Name, At)
{
    public override string Sort => Kind switch
    {
        EventKind => "an event",
        MeasureKind => "a measure",
        _ => "a test",
    };
}

/// <summary>A fact.</summary>
internal sealed record FactSymbol(Fact Fact) : Symbol(Fact.Name, Fact.Declared)
{
    public override string Sort => "a fact";
}

/// <summary>A spell; null where its events are not known.</summary>
internal sealed record SpellSymbol(string Name, SourceSpan At, Spell? Spell) : Symbol(Name, At)
{
    public override string Sort => "a spell";
}

/// <summary>A defined condition.</summary>
internal sealed record DefineSymbol(DefineEntry Entry) : Symbol(Entry.Name, Entry.Span)
{
    public override string Sort => "a defined condition";
}

/// <summary>A date of the programme.</summary>
internal sealed record DateSymbol(string Name, SourceSpan? At, NodaTime.LocalDate? Value) : Symbol(Name, At)
{
    public override string Sort => "a date of the programme";
}

/// <summary>A name that the language itself gives a meaning.</summary>
internal sealed record BuiltInSymbol(string Name) : Symbol(Name, null)
{
    public override string Sort => "a built-in name";
}
