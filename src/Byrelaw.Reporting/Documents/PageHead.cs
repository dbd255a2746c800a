namespace Byrelaw.Reporting.Documents;

/// <summary>What stands over every page: whose it is, what it is judged for, how far the records reach, when it is void, which devices are in.</summary>
/// <param name="Programme">The programme's name; empty where the rules stand on their own.</param>
/// <param name="Facts">In order.</param>
public sealed record PageHead(string Programme, params ImmutableArray<HeadFact> Facts)
{
    /// <summary>The devices that are in and not out; null where none is.</summary>
    public DevicesIn? Devices { get; init; }

    /// <summary>The last day on which the page holds; null where it is not a day that ends it.</summary>
    public LocalDate? HoldsTo { get; init; }

    /// <summary>The report's main pages, as seen from this one.</summary>
    public ImmutableArray<Way> Ways { get; init; } = [];

    /// <summary>The farm: of <c>Withy Bend, spring 2026</c> what stands before the comma.</summary>
    public string Farm => Programme.IndexOf(", ", StringComparison.Ordinal) is var at and > 0 ? Programme[..at] : Programme;

    /// <summary>The season: what stands after it; empty for nothing.</summary>
    public string Season => Programme.Length == Farm.Length ? "" : Phrases.Sentence(Programme[(Farm.Length + 2)..]);

    /// <summary>All of it on one line, as Markdown has it: <c>Withy Bend, spring 2026 · judged for 20 October 2026 · records to 4 October 2026</c>.</summary>
    public Wording InALine => string.Join(" · ", new[] { Programme }.Concat(Facts.Select(fact => fact.InALine)).Append(Devices?.InALine ?? "").Where(words => words.Length > 0));
}

/// <summary>One fact of a page's head.</summary>
/// <param name="Name">Such as <c>records to</c>; empty where the value says all.</param>
/// <param name="Value">Such as <c>4 October 2026</c>.</param>
public readonly record struct HeadFact(string Name, string Value)
{
    /// <summary>Both.</summary>
    public string InALine => Name.Length == 0 ? Value : $"{Name} {Value}";
}

/// <summary>Devices that are in and not out.</summary>
/// <param name="Count">How many.</param>
/// <param name="Listed">Whose, and since when: <c>1031 and 1040 since 4 October 2026</c>.</param>
public sealed record DevicesIn(int Count, string Listed)
{
    /// <summary><c>DEVICES IN: 1031 since 4 October 2026</c>.</summary>
    public string InALine => $"DEVICES IN: {Listed}";
}

/// <summary>One of the report's main pages.</summary>
/// <param name="Words">Its name.</param>
/// <param name="Target">Its file, as seen from the page.</param>
/// <param name="IsHere">Whether it is the page itself.</param>
public readonly record struct Way(string Words, string Target, bool IsHere = false);
