namespace Byrelaw.Reporting.Words;

/// <summary>A doubt about the records, in words: what is strange, what comes of it, and what would settle it.</summary>
/// <param name="Key">The kind of doubt, for programs.</param>
/// <param name="Lead">What is strange, without a stop at the end.</param>
/// <param name="Effect">What does not count, or that nothing is taken away.</param>
/// <param name="Settle">What a person can do.</param>
public sealed record SaidDoubt(string Key, string Lead, string Effect, string Settle)
{
    private const int AnimalsNamed = 4;

    /// <summary>The expectation that was tried; null where the doubt rests on none.</summary>
    public string? Expectation { get; init; }

    /// <summary>Kinds whose promises do not count.</summary>
    public ImmutableArray<Kind> Fallen { get; init; } = [];

    /// <summary>Kinds whose promises count for fewer days.</summary>
    public ImmutableArray<Kind> Limited { get; init; } = [];

    /// <summary>Kinds of which less is known for this doubt.</summary>
    public ImmutableArray<Kind> HeldBack => [.. Fallen, .. Limited];

    /// <summary>The records it is about.</summary>
    public ImmutableArray<DoubtRow> Rows { get; init; } = [];

    /// <summary>Whether what is told below may rest on it alone: mended first, it may be all there is to mend.</summary>
    public bool IsCauseOfOthers { get; init; }

    /// <summary>How many records it is about, where it does not name each.</summary>
    public int RowCount { get => field > 0 ? field : Rows.Length; init; }

    /// <summary>The numbers of the animals it is about, each once.</summary>
    public IReadOnlyList<string> Animals => [.. Rows.Select(row => row.Animal).OfType<string>().Distinct()];

    /// <summary>Whether the lead names them itself.</summary>
    public bool NamesThem { get; init; }

    /// <summary>A few of the animals: <c> (1004, 1017, 1022, 1051 and 3 more)</c>; empty for none.</summary>
    public string Named => NamesThem || Animals.Count == 0 ? "" : $" ({Phrases.FirstOf(Animals, AnimalsNamed)})";

    /// <summary>What is strange and about whom, as one sentence.</summary>
    public string Sentence => $"{Lead}{Named}.";

    /// <summary>All of it on one line of a numbered list.</summary>
    /// <param name="asked">What follows from it on a list; empty for nothing.</param>
    public Wording Whole(string asked = "") =>
        $"{Wording.Bold(Lead)}{Named}. {Effect}{(asked.Length > 0 ? " " + asked : "")} {Settle}";
}
