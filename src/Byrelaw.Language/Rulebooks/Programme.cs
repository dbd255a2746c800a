namespace Byrelaw.Language.Rulebooks;

/// <summary>One season's programme on one farm.</summary>
/// <param name="Name">As written.</param>
/// <param name="Dates">By date; among them, where set, <c>collection</c>, <c>first transfer</c>, <c>final transfer</c>.</param>
/// <param name="Choices">The lists to draw up, in the file's order.</param>
/// <param name="Span">Where.</param>
public sealed record Programme(string Name, ImmutableArray<ProgrammeDate> Dates, ImmutableArray<Choice> Choices, SourceSpan Span)
{
    /// <summary>What it is for, and the choices its plan is made from.</summary>
    public Aims Aims { get; init; } = new();

    /// <summary>Which session its dates are those of, from 1: a plan moves the programme from one to the next.</summary>
    public int Session { get; init; } = 1;

    /// <summary>The date with this name; null where the programme has none.</summary>
    public LocalDate? Date(string name)
    {
        foreach (var date in Dates)
        {
            if (NameFolding.Fold(date.Name) == NameFolding.Fold(name))
            {
                return date.Date;
            }
        }

        return null;
    }

    /// <summary>The last day on which anything is transferred, in the session whose dates it has; null for a programme without transfers.</summary>
    public LocalDate? FinalTransfer => Date("final transfer");

    /// <summary>The last day on which anything is transferred in the last session: as long after its collection as in the first. Null for a programme
    /// without transfers.</summary>
    public LocalDate? LastTransfer =>
        FinalTransfer is { } final && Date("collection") is { } first ? final.PlusDays(Math.Max(0, Period.DaysBetween(first, LastCollection(first)))) : FinalTransfer;

    private LocalDate LastCollection(LocalDate first) => Aims switch
    {
        { OnAVisit: not null, Repeat: { } repeat } => (repeat.Every with { Count = repeat.Every.Count * Math.Max(0, repeat.Times - Session) }).After(first),
        { Collections: { Length: > 1 } all } when Session <= all.Length && all[Session - 1] == first => all[^1],
        _ => first,
    };
}

/// <summary>A named day of the programme.</summary>
public sealed record ProgrammeDate(string Name, LocalDate Date, SourceSpan Span)
{
    /// <summary>How it is reckoned from another date, so that it moves with that one; null for a date that stands by itself.</summary>
    public DayReference? From { get; init; }
}

/// <summary>Which animals a list is drawn from.</summary>
public enum ChoiceFrom
{
    /// <summary>Every female present on the judging day.</summary>
    Females,

    /// <summary>Females that have calved.</summary>
    Cows,

    /// <summary>Females that have not.</summary>
    Heifers,

    /// <summary>Animals named by number.</summary>
    Named,

    /// <summary>Every animal of another list.</summary>
    AnotherList,
}

/// <summary>What becomes of the animals of a list.</summary>
public enum ListUse
{
    /// <summary>They may be given a hormone or an embryo: the floor lies under the list.</summary>
    HormoneOrEmbryo,

    /// <summary>Their eggs are collected, and nothing is given: the floor bars nobody, and what it finds is shown.</summary>
    NothingGiven,

    /// <summary>They are looked at: the list has no floor and clears nobody.</summary>
    ForLookingOnly,
}

/// <summary>A list to draw up: <c>choose recipients from females, judged from first transfer to final transfer</c>.</summary>
/// <param name="List">The list's name.</param>
/// <param name="From">Where its animals come from.</param>
/// <param name="Animals">Numbers, for <see cref="ChoiceFrom.Named"/>.</param>
/// <param name="OtherList">For <see cref="ChoiceFrom.AnotherList"/>; that list stands earlier.</param>
/// <param name="JudgedFrom">The first judging day.</param>
/// <param name="JudgedTo">The last; the same for a single day.</param>
/// <param name="Span">Where.</param>
public sealed record Choice(
    string List, ChoiceFrom From, ImmutableArray<string> Animals, string? OtherList,
    LocalDate JudgedFrom, LocalDate JudgedTo, SourceSpan Span)
{
    /// <summary>The programme's name for the first judging day; null for a date as written.</summary>
    public string? FromDate { get; init; }

    /// <summary>The programme's name for the last judging day; null for a date as written, or where it is the first.</summary>
    public string? ToDate { get; init; }

    /// <summary>What becomes of its animals.</summary>
    public ListUse Use { get; init; }

    /// <summary>Whether the four rules of the floor lie under it.</summary>
    public bool HasFloor => Use == ListUse.HormoneOrEmbryo;
}
