namespace Byrelaw.Planning.Seasons;

/// <summary>How many animals, what comes of it, and what it costs.</summary>
public sealed record SeasonNumbers
{
    /// <summary>The chain, and what is missing of it.</summary>
    public required ChainReading Reading { get; init; }

    /// <summary>How sure the programme wants to be.</summary>
    public required double Certainty { get; init; }

    /// <summary>Each method that may be used, the first liked best.</summary>
    public required ImmutableArray<MethodNumbers> Methods { get; init; }

    /// <summary>What an idle recipient and a surplus embryo cost; null without methods or embryos.</summary>
    public InVain? InVain { get; init; }

    /// <summary>The number by the method liked best that balances idle recipients and surplus embryos; null without methods or embryos.</summary>
    public Balance? Balance { get; init; }

    /// <summary>Recipients treated in the plan are as many as the programme says itself.</summary>
    public bool IsByTheProgramme { get; init; }

    /// <summary>The sessions as planned; empty where no embryo comes.</summary>
    public ImmutableArray<SessionSize> Sessions { get; init; } = [];

    /// <summary>What comes of it, with those named; null where the assumptions do not say how embryos come.</summary>
    public Forecast? Forecast { get; init; }

    /// <summary>What comes of it if all that is asked turns out well: no less at any stage. Null where nobody is named by name.</summary>
    public Forecast? IfAllPass { get; init; }

    /// <summary>What comes of it if as many of those asked about turn out to be usable as the programme assumes; null where it assumes nothing of that. Only the stages are told.</summary>
    public Forecast? Between { get; init; }

    /// <summary>What it costs if all that is asked turns out well.</summary>
    public Budget? BudgetIfAllPass { get; init; }

    /// <summary>What one more would bring; empty where nothing is wanted.</summary>
    public ImmutableArray<Worth> Worth { get; init; } = [];

    /// <summary>How many more would be needed, each by itself; empty where nothing is wanted.</summary>
    public ImmutableArray<Needed> Needed { get; init; } = [];

    /// <summary>How many there would be of what is wanted with everything at its limit: all sessions, donors and animals there are; null where nothing is wanted.</summary>
    public Counts? Farthest { get; init; }

    /// <summary>How sure what is wanted would be then; null where nothing is wanted.</summary>
    public double? SurestChance => Reading.Chain?.Goal is { } goal ? Farthest?.AtLeast(goal.Count) : null;

    /// <summary>Whether some plan is as sure as wished; null where nothing is wanted.</summary>
    public bool? CanBeReached => SurestChance is { } chance ? chance >= Certainty : null;

    /// <summary>What it costs; null where no price is given, or nothing can be forecast.</summary>
    public Budget? Budget { get; init; }
}
