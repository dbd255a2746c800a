namespace Byrelaw.Language.Binding.Rules;

/// <summary>What the lines of a rule, a preference or a change to one say; null where they say nothing.</summary>
internal sealed record Stated
{
    public (Audience Audience, NamedCondition? Define)? AppliesTo { get; init; }

    public Condition? Condition { get; init; }

    public IfNotKnown? IfNotKnown { get; init; }

    public bool OnTheDay { get; init; }

    public double? Counts { get; init; }

    public string? Because { get; init; }

    public string? Source { get; init; }

    public Agreement? Agreement { get; init; }

    /// <summary>Whether a line could not be read, or something in a condition means nothing.</summary>
    public bool IsBroken { get; init; }

    /// <summary>Which lines stand there, apart from reason, source and agreement: two layers that state one of them conflict.</summary>
    public IEnumerable<string> Lines
    {
        get
        {
            return All().Where(line => line.IsStated).Select(line => line.Words);
            IEnumerable<(bool IsStated, string Words)> All() =>
            [
                (AppliesTo is not null, "applies to"), (Condition is not null, "needs"), (IfNotKnown is not null, "if not known"),
                (OnTheDay, "on the day"), (Counts is not null, "counts"),
            ];
        }
    }

    /// <summary>Binds the lines of a block.</summary>
    public static Stated Bind(Context context, Block block, IReadOnlyList<DefineEntry> defines)
    {
        var condition = context.Condition(block);
        var applies = block.First<AppliesToLine>() is { } line ? Audience(context, line) : null;
        var agreed = block.First<AgreedByLine>();
        return new Stated
        {
            AppliesTo = applies,
            Condition = condition,
            IfNotKnown = block.First<IfNotKnownLine>()?.Instead,
            OnTheDay = block.First<OnTheDayLine>() is not null,
            Counts = block.First<CountsLine>()?.Points.Value,
            Because = block.First<BecauseLine>()?.Reason.Value,
            Source = block.First<SourceLine>()?.Source.Value,
            Agreement = agreed is null ? null : new Agreement([.. agreed.By.Select(by => by.Value)], agreed.On.Value),
            IsBroken = block.IsBroken
                || (condition is not null && BrokenConditions.IsBroken(condition, defines))
                || (applies is null && block.First<AppliesToLine>() is not null)
                || (applies?.Define is { } define && BrokenConditions.IsBroken(define, defines)),
        };
    }

    /// <summary>Whom a line speaks of; null, and a problem, where its name means nobody.</summary>
    public static (Audience Audience, NamedCondition? Define)? Audience(Context context, AppliesToLine line) => context.Names.Find(line.Audience.Text) switch
    {
        BuiltInSymbol { Name: "heifers" } => (Rulebooks.Audience.Heifers, null),
        BuiltInSymbol { Name: "cows" } => (Rulebooks.Audience.Cows, null),
        BuiltInSymbol { Name: "females" } => (Rulebooks.Audience.Females, null),
        DefineSymbol { Entry: var entry } => (Rulebooks.Audience.Named, new NamedCondition(entry.Name, entry.Index, false) { Span = line.Audience.Span }),
        _ => context.None<(Audience Audience, NamedCondition? Define)>(context.NotFound(
            line.Audience, symbol => symbol is DefineSymbol or BuiltInSymbol { Name: "heifers" or "cows" or "females" }, "`cows`, `heifers`, `females` or a defined name")),
    };
}
