namespace Byrelaw.Workshop.Editing.Names;

/// <summary>What the grammar's words for an expected name or text mean among the names of a rulebook.</summary>
internal static class NameLabels
{
    /// <summary>A name with this label may also be an answer and its test.</summary>
    public const string Counted = "what is counted, such as `heat`";

    /// <summary>A value after <c>is</c>, or one that a fact declares.</summary>
    public const string Value = "a value";

    /// <summary>What an example expects something of, where that is no rule.</summary>
    public const string ListOrDefine = "a list or a defined condition";

    /// <summary>What the line of an example starts with that puts something on record.</summary>
    public static readonly Wanted OnRecord = new(LeafKind.Name, "something on record, such as `calving 2026-09-07`");

    /// <summary>A detail of the kind before it.</summary>
    public const string Detail = "a detail, such as `method`";

    /// <summary>A value of the detail before it.</summary>
    public const string DetailValue = "a value of the detail";

    private const string Result = "a result";
    private const string AName = "a name";

    private static readonly FrozenDictionary<string, Func<Symbol, bool>> Symbols = new Dictionary<string, Func<Symbol, bool>>
    {
        [Counted] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["a measure or a test"] = symbol => symbol is KindSymbol { Kind: MeasureKind or TestKind },
        ["a measure"] = symbol => symbol is KindSymbol { Kind: MeasureKind },
        ["what happened, such as `calving`"] = symbol => symbol is KindSymbol,
        ["an event, or an answer and its test"] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["what it comes after or before, such as `mating`"] = symbol => symbol is KindSymbol { Kind: EventKind } or SpellSymbol,
        ["an event"] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["an event, measure or test"] = symbol => symbol is KindSymbol,
        ["the event that starts it"] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["the event that ends it"] = symbol => symbol is KindSymbol { Kind: EventKind },
        [AName] = symbol => symbol is FactSymbol or SpellSymbol or DefineSymbol or BuiltInSymbol { Name: "age" or "parity" },
        ["a defined name or a spell"] = symbol => symbol is SpellSymbol or DefineSymbol,
        ["`cows`, `heifers`, `females` or a defined name"] = symbol => symbol is DefineSymbol or BuiltInSymbol { Name: "cows" or "heifers" or "females" },
        ["the name of a date"] = symbol => symbol is DateSymbol or BuiltInSymbol { Name: "birth" },
        ["the name of a date, such as `collection`"] = symbol => symbol is DateSymbol,
        ["a fact that is a number"] = symbol => symbol is FactSymbol { Fact.Type: FactType.Number or FactType.Amount },
        [ListOrDefine] = symbol => symbol is DefineSymbol,
        [OnRecord.Label] = symbol => symbol is KindSymbol or FactSymbol or BuiltInSymbol { Name: "parity" },
        ["the name of a fact"] = symbol => symbol is FactSymbol { Fact.Type: FactType.Number or FactType.Amount },
        ["a declared name"] = symbol => symbol is KindSymbol or FactSymbol or BuiltInSymbol { Name: "age" or "parity" or "cows" or "heifers" or "females" or "birth" },
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Lists = new[]
    {
        "the name of a list, such as `recipients`", "the name of a list, such as `donors`", "`females`, `cows`, `heifers` or another list",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Free = new[]
    {
        Value, Result, Detail, DetailValue, "", "a kind of record", "a word that people write", "a breed", "the mob's name", "the name of a mob", "`animal treated`", "a weekday such as `Sundays`, or `holidays`", "`collection`, `treatment` or `transfer`",
        "what the caution is about, such as `prostaglandin`", "what is assumed, such as `pregnant per transfer`",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether it is known here what the grammar asks for.</summary>
    public static bool Knows(Wanted wanted) => Symbols.ContainsKey(wanted.Label) || Lists.Contains(wanted.Label) || Free.Contains(wanted.Label);

    /// <summary>Whether a name of the namespace may stand where the grammar asks for one. What a label that is not
    /// known here means is left to whoever binds the line: then every name may.</summary>
    public static bool Takes(Wanted wanted, Symbol symbol, NotedLine? line) =>
        // An example's answer rests on what is on record, and on defined names.
        wanted.Label == AName && line?.Block == BlockKind.Example ? symbol is KindSymbol or FactSymbol or SpellSymbol or DefineSymbol
        : Symbols.TryGetValue(wanted.Label, out var takes) ? takes(symbol) : !Lists.Contains(wanted.Label) && !Free.Contains(wanted.Label);

    /// <summary>Whether the grammar asks for one of the words that the line's subject may be.</summary>
    public static bool IsValue(Wanted wanted) => wanted.Label is Value or Result;

    /// <summary>Whether the grammar asks for more words of something on record: where its name ends only its meaning tells.</summary>
    public static bool IsMoreOnRecord(Wanted wanted, NotedLine? line) => wanted.Label.Length == 0 && line is { Block: BlockKind.Example, Line.Tokens.Length: > 0 };

    /// <summary>Whether the grammar asks for the name of a list.</summary>
    public static bool IsList(Wanted wanted) => Lists.Contains(wanted.Label);

    /// <summary>Whether the grammar asks for the name of a rule or, in its own line, of a preference.</summary>
    public static bool IsRule(Wanted wanted, string head) =>
        wanted is { Kind: LeafKind.Text, Label: "the rule's name in quotes" or "a rule's name in quotes" } || (wanted.Kind == LeafKind.Text && head == "prefer");

    /// <summary>Whether a line with this first word declares the rule that it names.</summary>
    public static bool DeclaresRule(string head) => head is "rule" or "safety" or "prefer";
}
