namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Which of the results in a window a condition looks at.</summary>
public enum Aggregate
{
    /// <summary>The latest; all of the latest day where there are several.</summary>
    Latest,

    /// <summary>The lowest.</summary>
    Lowest,

    /// <summary>The highest.</summary>
    Highest,

    /// <summary>The mean of all.</summary>
    Average,

    /// <summary>Latest minus earliest.</summary>
    Change,

    /// <summary>Each of them.</summary>
    Every,
}

/// <summary>The words for them.</summary>
public static class AggregateWords
{
    /// <summary>As a rule says it: <c>latest</c>, <c>change in</c>.</summary>
    public static string Words(this Aggregate aggregate) => aggregate switch
    {
        Aggregate.Latest => "latest",
        Aggregate.Lowest => "lowest",
        Aggregate.Highest => "highest",
        Aggregate.Average => "average",
        Aggregate.Every => "every",
        _ => "change in",
    };
}
