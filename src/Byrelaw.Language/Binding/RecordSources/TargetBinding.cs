namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>Finds what a line of a source speaks of: a column of the landed files, a fact, a kind of record, or a detail.</summary>
internal static class TargetBinding
{
    /// <summary>Columns of <c>events.csv</c> that are there whatever is declared.</summary>
    public static readonly ImmutableArray<string> OfEvents = ["date", "animal", "kind", "value", "unit", "note", "recorded", "sample", "herd"];

    /// <summary>Columns of <c>animals.csv</c> that are there whatever is declared; <c>kind</c> says what happened to her, on the day that another column holds.</summary>
    public static readonly ImmutableArray<string> OfAnimals = ["animal", "born", "sex", "mob", "parity", "parity on", "herd", "kind"];

    /// <summary>What a name means in a source with such rows; null, and a problem, where it means nothing there.</summary>
    public static SourceTarget? Target(this Context context, NameSyntax name, SourceRows rows)
    {
        var folded = NameFolding.Fold(name.Text.Replace('_', ' '));
        if ((rows == SourceRows.Animals ? OfAnimals : OfEvents).Contains(folded))
        {
            return new LandedTarget(folded);
        }

        return context.Names.Find(name.Text) switch
        {
            FactSymbol { Fact: var fact } => rows == SourceRows.Animals ? new FactTarget(fact)
                // What is true of an animal may be a detail of what happens too, such as a sire.
                : context.DetailNamed(name.Text) is { } ofAnEntry ? new DetailTarget(ofAnEntry)
                : context.Fail<SourceTarget>(SourceProblems.FactOfAnEvent(name.Span)),
            KindSymbol { Kind: EventKind { IsMobMove: true } } when rows == SourceRows.Animals => new LandedTarget("mob"),
            KindSymbol { Kind: var kind } => new KindTarget(kind),
            _ => context.DetailNamed(name.Text) is { } detail ? new DetailTarget(detail) : context.Fail<SourceTarget>(SourceProblems.UnknownTarget(name.Span, rows, context.Nearest(name, rows))),
        };
    }

    /// <summary>The declared spelling of a detail of any kind; null where none has one of this name.</summary>
    public static string? DetailNamed(this Context context, string name)
    {
        var folded = NameFolding.Fold(name);
        return context.AllKinds().SelectMany(kind => kind.Details).Select(detail => detail.Name).FirstOrDefault(detail => NameFolding.Fold(detail) == folded);
    }

    /// <summary>All declared kinds, in the order of their ids.</summary>
    public static IEnumerable<Kind> AllKinds(this Context context) =>
        context.Names.All.Select(name => name.Symbol).OfType<KindSymbol>().Select(symbol => symbol.Kind).Distinct().OrderBy(kind => kind.Id);

    private static string? Nearest(this Context context, NameSyntax name, SourceRows rows) =>
        NearestName.To(name.Text, rows == SourceRows.Animals ? OfAnimals : OfEvents)
        ?? context.Names.Nearest(name.Text, symbol => symbol is KindSymbol || (symbol is FactSymbol && rows == SourceRows.Animals))?.Spelling
        ?? NearestName.To(name.Text, context.AllKinds().SelectMany(kind => kind.Details).Select(detail => detail.Name));
}
