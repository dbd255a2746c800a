using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.FindingOut;

/// <summary>A record that is missed of an animal, supposed to say what speaks for her.</summary>
public sealed record AskedRecord
{
    /// <summary>Her place in the herd.</summary>
    public required int Animal { get; init; }

    /// <summary>The rule that misses it; empty where it is what a method asks.</summary>
    public required string Rule { get; init; }

    /// <summary>The event, measure or test, as declared.</summary>
    public required Kind Kind { get; init; }

    /// <summary>What is written in its value; empty for none.</summary>
    public string Value { get; init; } = "";

    /// <summary>The value's unit; empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Details by their names.</summary>
    public ImmutableArray<(string Name, string Value)> Details { get; init; } = [];

    /// <summary>Of whom it is taken: her number, or those of her mob.</summary>
    public required ImmutableArray<string> Of { get; init; }

    /// <summary>Whose result it is, where it is that of another of her mob: her number, or <c>mob:NAME</c> of one of the mob itself; else empty.</summary>
    public string Whose { get; init; } = "";

    /// <summary>The line that is not as it stands there, such as one that cannot be read; 0 for none.</summary>
    public int WithoutLine { get; init; }

    /// <summary>Whether the sample is taken, and its result awaited.</summary>
    public bool IsAwaited => WithoutLine > 0 && Value.Length > 0;

    /// <summary>Whether something is to be done on a day to come; else a line is mended, or what happened is looked up.</summary>
    public bool IsTaken { get; init; }

    /// <summary>The first day that its rule looks at, on the last of the days on which it is asked; null for one that looks back to no day, or for what is looked up or mended.</summary>
    public LocalDate? LooksBackTo { get; init; }

    /// <summary>The first day that it may be dated on, by what its rule looks at and the time there is.</summary>
    public required LocalDate First { get; init; }

    /// <summary>The last.</summary>
    public required LocalDate Last { get; init; }

    /// <summary>The day that it is supposed to be of.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>So many days before it is dated it must be begun: a course takes time.</summary>
    public int BegunBefore { get; init; }

    /// <summary>So many days after it is dated its result is in hand.</summary>
    public int ResultsAfter { get; init; }

    /// <summary>How many more of her mob are missing; 0 where it is her own.</summary>
    public int MoreOfTheMob { get; init; }

    /// <summary>Whether anything can still be done about it.</summary>
    internal bool IsOpen => WithoutLine > 0 || First <= Last;

    /// <summary>The rows that are supposed; none where a line is only taken away.</summary>
    internal IEnumerable<SupposedRow> Rows(Herd herd) => WithoutLine > 0 && Value.Length == 0 ? [] : Of.Select(number => new SupposedRow(Date, number, Kind.Name, Value, Unit) { Details = Details });
}

/// <summary>That an animal is sure if what she misses turns out well: the records that were supposed, by which she was.</summary>
/// <param name="Records">One for each thing to find out.</param>
public sealed record ProvedRecords(ImmutableArray<AskedRecord> Records);
