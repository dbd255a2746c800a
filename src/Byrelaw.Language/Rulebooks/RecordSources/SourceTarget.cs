namespace Byrelaw.Language.Rulebooks.RecordSources;

/// <summary>What a column of a source says something of.</summary>
public abstract record SourceTarget
{
    /// <summary>As people write it.</summary>
    public abstract string Name { get; }
}

/// <summary>A column that the landed files have whatever is declared, such as <c>animal</c>.</summary>
/// <param name="Column">Its heading there.</param>
public sealed record LandedTarget(string Column) : SourceTarget
{
    /// <inheritdoc/>
    public override string Name => Column;
}

/// <summary>A declared fact.</summary>
/// <param name="Fact">Which.</param>
public sealed record FactTarget(Fact Fact) : SourceTarget
{
    /// <inheritdoc/>
    public override string Name => Fact.Name;
}

/// <summary>An event, measure or test: the day of an event, or a result.</summary>
/// <param name="Kind">Which.</param>
public sealed record KindTarget(Kind Kind) : SourceTarget
{
    /// <inheritdoc/>
    public override string Name => Kind.Name;
}

/// <summary>A detail, of whatever kind a row is of that has one of this name.</summary>
/// <param name="Detail">Declared spelling.</param>
public sealed record DetailTarget(string Detail) : SourceTarget
{
    /// <inheritdoc/>
    public override string Name => Detail;
}
