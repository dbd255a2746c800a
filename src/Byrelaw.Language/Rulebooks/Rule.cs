namespace Byrelaw.Language.Rulebooks;

/// <summary>Whom a rule is for.</summary>
public enum Audience
{
    /// <summary>Every animal of the list.</summary>
    Everyone,

    /// <summary>Animals that have never calved.</summary>
    Heifers,

    /// <summary>Animals that have calved.</summary>
    Cows,

    /// <summary>Females.</summary>
    Females,

    /// <summary>Animals for which a defined condition holds.</summary>
    Named,
}

/// <summary>What a rule answers where its conditions are not known.</summary>
public enum IfNotKnown
{
    /// <summary>Not known: someone has to find out.</summary>
    Ask,

    /// <summary>Met. Never in a safety rule, a broken rule, or where a sample's result is not known.</summary>
    Pass,

    /// <summary>Not met.</summary>
    Exclude,
}

/// <summary>Where a rule comes from, as seen from the programme's own file.</summary>
public enum Basis
{
    /// <summary>From a used file, as it stands there.</summary>
    Base,

    /// <summary>From a used file, changed by another.</summary>
    Changed,

    /// <summary>Written in the programme's own file.</summary>
    Local,
}

/// <summary>Who agreed to something, and when.</summary>
/// <param name="By">At least one.</param>
/// <param name="On">The day.</param>
public sealed record Agreement(ImmutableArray<string> By, LocalDate On);

/// <summary>What one rule demands, in one version of it.</summary>
public sealed record Rule
{
    /// <summary>The list of a rule for each list that is chosen.</summary>
    public const string EveryList = "every list";

    /// <summary>Unique in the rulebook.</summary>
    public required string Name { get; init; }

    /// <summary>The list it belongs to, such as <c>recipients</c>; <see cref="EveryList"/> for each chosen one.</summary>
    public required string List { get; init; }

    /// <summary>Whether a list is judged by it.</summary>
    public bool IsFor(string list) => List == list || List == EveryList;

    /// <summary>A safety rule cannot be dropped, waived or passed.</summary>
    public bool IsSafety { get; init; }

    /// <summary>Whether it is one of the floor's, which no file writes.</summary>
    public bool IsOfTheFloor { get; init; }

    /// <summary>Shown always, judged only on the day by the person beside the animal.</summary>
    public bool OnTheDay { get; init; }

    /// <summary>Whom it is for.</summary>
    public Audience Audience { get; init; }

    /// <summary>For <see cref="Audience.Named"/>: the defined condition.</summary>
    public NamedCondition? AppliesTo { get; init; }

    /// <summary>The demand. A <see cref="BrokenCondition"/> where it could not be read. Of a safety rule that was changed: all that was asked before and
    /// what is asked now, together.</summary>
    public required Condition Needs { get; init; }

    /// <summary>What the latest change of a safety rule asks besides all that was asked before; null where none asks more.</summary>
    public AskedBesides? Besides { get; init; }

    /// <summary>What its latest version that asks anything states itself.</summary>
    public Condition Stated => Besides?.Here ?? Needs;

    /// <summary>The rule with another demand in the place of what is stated; what a safety rule asked before stays.</summary>
    public Rule Asking(Condition stated) => Besides is not { } besides ? this with { Needs = stated }
        : this with { Needs = AskedBesides.Together(besides.Before, stated), Besides = new AskedBesides(besides.Before, stated) { IsStricter = besides.IsStricter, Shown = besides.IsStricter ? stated : null } };

    /// <summary>What people read as its demand: where what was asked before is proved to follow from what is asked now, that alone.</summary>
    public Condition Shown => Besides?.Shown ?? Needs;

    /// <summary>What stands in for a not known.</summary>
    public IfNotKnown IfNotKnown { get; init; }

    /// <summary>The reason in the file's words; null where none is given.</summary>
    public string? Because { get; init; }

    /// <summary>Where the number comes from; null where none is given.</summary>
    public string? Source { get; init; }

    /// <summary>Who agreed to this version; null for a base rule.</summary>
    public Agreement? Agreement { get; init; }

    /// <summary>The version that this one changed; null for the first.</summary>
    public Rule? Before { get; init; }

    /// <summary>Base, changed or local.</summary>
    public Basis Basis { get; init; }

    /// <summary>A line of it could not be read, so nobody passes it.</summary>
    public bool IsBroken { get; init; }

    /// <summary>Where this version is written (the <c>change</c> block for a changed one).</summary>
    public required SourceSpan Span { get; init; }
}

/// <summary>What a change of a safety rule asks besides. A change adds, and never replaces: no text can loosen such a rule.</summary>
/// <param name="Before">All that was asked before.</param>
/// <param name="Here">What the change asks.</param>
public sealed record AskedBesides(Condition Before, Condition Here)
{
    /// <summary>Whether whoever meets what is asked here is proved to meet what was asked before.</summary>
    public bool IsStricter { get; init; }

    /// <summary>Whether nobody wrote it: it is only tried out what another number would do.</summary>
    public bool IsTried { get; init; }

    /// <summary>What people read: what is asked here where it is stricter, else that and what was to be read before.</summary>
    public Condition? Shown { get; init; }

    /// <summary>Both asked together. What stands in both is asked once.</summary>
    public static Condition Together(Condition before, Condition here)
    {
        var now = Parts(here);
        var asked = now.Select(ConditionText.Meaning.Of).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Condition> all = [.. Parts(before).Where(part => !asked.Contains(ConditionText.Meaning.Of(part))), .. now];
        return all.Length == now.Length ? here : new ListCondition(ListKind.AllOf, 0, all) { Span = here.Span };
    }

    private static ImmutableArray<Condition> Parts(Condition condition) => condition is ListCondition { Kind: ListKind.AllOf } list ? list.Items : [condition];
}

/// <summary>What ranks animals among those who may be used; it never excludes.</summary>
public sealed record Prefer
{
    /// <summary>Unique in the rulebook, among rules too.</summary>
    public required string Name { get; init; }

    /// <summary>The list it belongs to.</summary>
    public required string List { get; init; }

    /// <summary>Whether a list is ranked by it.</summary>
    public bool IsFor(string list) => List == list || List == Rule.EveryList;

    /// <summary>What is liked.</summary>
    public required Condition Condition { get; init; }

    /// <summary>Points where it is true on the judging day.</summary>
    public double Counts { get; init; } = 1;

    /// <summary>The reason.</summary>
    public string? Because { get; init; }

    /// <summary>Where it comes from.</summary>
    public string? Source { get; init; }

    /// <summary>Who agreed to this version; null for a base one.</summary>
    public Agreement? Agreement { get; init; }

    /// <summary>The version that this one changed.</summary>
    public Prefer? Before { get; init; }

    /// <summary>Base, changed or local.</summary>
    public Basis Basis { get; init; }

    /// <summary>A line of it could not be read: it gives no points.</summary>
    public bool IsBroken { get; init; }

    /// <summary>Where this version is written.</summary>
    public required SourceSpan Span { get; init; }
}

/// <summary>A rule set aside for everyone on this farm.</summary>
/// <param name="Rule">The last version of the rule before it was dropped.</param>
/// <param name="Because">The reason.</param>
/// <param name="Agreement">Who and when.</param>
/// <param name="Span">Where.</param>
public sealed record Drop(Rule Rule, string Because, Agreement Agreement, SourceSpan Span);

/// <summary>A rule set aside for one animal, from the agreed day to <paramref name="Until"/>, both included.</summary>
public sealed record Waiver(string Rule, string Animal, LocalDate Until, string Because, Agreement Agreement, SourceSpan Span);

/// <summary>A condition with a name.</summary>
/// <param name="Name">Declared spelling.</param>
/// <param name="Condition">What it stands for.</param>
/// <param name="IsBroken">A line of it could not be read; then so is every user of it.</param>
/// <param name="Span">Where.</param>
public sealed record Define(string Name, Condition Condition, bool IsBroken, SourceSpan Span)
{
    /// <summary>Whether it is one of the floor's own words.</summary>
    public bool IsOfTheFloor { get; init; }
}
