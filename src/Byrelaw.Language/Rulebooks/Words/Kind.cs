namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>Something that happens to animals on a day: an event, a measurement or a test.</summary>
/// <param name="Name">Declared spelling.</param>
/// <param name="AlsoNames">Other spellings, as declared.</param>
/// <param name="Declared">Where.</param>
public abstract record Kind(string Name, ImmutableArray<string> AlsoNames, SourceSpan Declared)
{
    /// <summary>The place of this kind in <see cref="Vocabulary.ById"/>: the column in a herd.</summary>
    public required int Id { get; init; }

    /// <summary>Which entries of another kind this is; null for a kind that a file declares.</summary>
    public KindFilter? Filter { get; init; }

    /// <summary>The kind that a file declares: itself, or the one that it is entries of.</summary>
    public Kind Declaration => Filter?.Of ?? this;

    /// <summary>What more may be on record of an entry, each in a column of its name.</summary>
    public ImmutableArray<EntryDetail> Details { get; init; } = [];

    /// <summary>Prints as its name: a declared kind is its own declaration, and would never end.</summary>
    protected virtual bool PrintMembers(StringBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Append(Name);
        return true;
    }
}

/// <summary>Whether an event brings an animal into the herd or takes her out of it.</summary>
public enum HerdEffect
{
    /// <summary>Neither.</summary>
    None,

    /// <summary>She is in the herd from that day.</summary>
    Joins,

    /// <summary>She is out of the herd from that day.</summary>
    Leaves,
}

/// <summary>Which step of a programme an entry of an event is.</summary>
public enum Marks
{
    /// <summary>None.</summary>
    Nothing,

    /// <summary>Something is given: a step of a method.</summary>
    Treatment,

    /// <summary>Eggs are collected, or embryos flushed.</summary>
    Collection,

    /// <summary>An embryo is put into her.</summary>
    Transfer,
}

/// <summary>An event: it happened on a day, nothing more is known of it. The event <c>mob</c>
/// is built in; its value is the mob's name.</summary>
public sealed record EventKind(string Name, ImmutableArray<string> AlsoNames, SourceSpan Declared)
    : Kind(Name, AlsoNames, Declared)
{
    /// <summary>Joining, leaving or neither.</summary>
    public HerdEffect Effect { get; init; }

    /// <summary>True for an event that leaves the herd for good, as death does: nobody comes back from it.</summary>
    public bool IsForGood { get; init; }

    /// <summary>Before this age it cannot have happened, so nothing need be on record.</summary>
    public TimeLength? NotBeforeAge { get; init; }

    /// <summary>Which step of a programme an entry is.</summary>
    public Marks Marks { get; init; }

    /// <summary>True for what happens to embryos, such as that one is frozen: its rows name <c>embryo:</c> and a label, and no condition may ask for it.</summary>
    public bool IsOfEmbryos { get; init; }

    /// <summary>True for the built-in event <c>mob</c>.</summary>
    public bool IsMobMove { get; init; }
}

/// <summary>A measured value, in a unit or on a scale.</summary>
public sealed record MeasureKind(string Name, ImmutableArray<string> AlsoNames, SourceSpan Declared)
    : Kind(Name, AlsoNames, Declared)
{
    /// <summary>The unit values are kept in; null for a measure on a scale.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The scale, both ends included; null for a measure with a unit.</summary>
    public Scale? Scale { get; init; }

    /// <summary>In g/mol; converts between mass and amount of substance.</summary>
    public double? MolarMass { get; init; }

    /// <summary>True where someone beside the animal can take it; false where it needs a laboratory.</summary>
    public bool InTheYards { get; init; }

    /// <summary>The values that a cow can have, in <see cref="Unit"/>, both ends included; null where nobody said.</summary>
    public Scale? Plausible { get; init; }
}

/// <summary>A scale of scores.</summary>
public sealed record Scale(double From, double To);

/// <summary>A test whose result is one of a few declared answers.</summary>
public sealed record TestKind(string Name, ImmutableArray<string> AlsoNames, SourceSpan Declared)
    : Kind(Name, AlsoNames, Declared)
{
    /// <summary>The answers it can have, declared spelling.</summary>
    public ImmutableArray<string> Answers { get; init; } = [];

    /// <summary>What else answers are called in other files, each with its place among <see cref="Answers"/>.</summary>
    public ImmutableArray<(string Name, int Answer)> AnswersAlso { get; init; } = [];

    /// <summary>The place of an answer, by any of its names; -1 where the test has no such answer.</summary>
    public int PlaceOf(string answer)
    {
        var folded = NameFolding.Fold(answer);
        for (var i = 0; i < Answers.Length; i++)
        {
            if (NameFolding.Fold(Answers[i]) == folded)
            {
                return i;
            }
        }

        foreach (var (name, place) in AnswersAlso)
        {
            if (NameFolding.Fold(name) == folded)
            {
                return place;
            }
        }

        return -1;
    }

    /// <summary>True where someone beside the animal can do it; false where it needs a laboratory.</summary>
    public bool InTheYards { get; init; }
}
