using System.Collections.Frozen;
using Byrelaw.Language.Binding;
using Byrelaw.Language.Grammar;
using Byrelaw.Language.Rulebooks.Words;

namespace Byrelaw.Language.Editing.Names;

/// <summary>What the grammar's words for an expected name or text mean among the names of a rulebook.</summary>
internal static class NameLabels
{
    /// <summary>A name with this label may also be an answer and its test.</summary>
    public const string Counted = "what is counted, such as `heat`";

    /// <summary>A value after <c>is</c>, or one that a fact declares.</summary>
    public const string Value = "a value";

    private static readonly FrozenDictionary<string, Func<Symbol, bool>> Symbols = new Dictionary<string, Func<Symbol, bool>>
    {
        [Counted] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["a measure or a test"] = symbol => symbol is KindSymbol { Kind: MeasureKind or TestKind },
        ["a measure"] = symbol => symbol is KindSymbol { Kind: MeasureKind },
        ["what happened, such as `calving`"] = symbol => symbol is KindSymbol,
        ["an event, measure or test"] = symbol => symbol is KindSymbol,
        ["the event that starts it"] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["the event that ends it"] = symbol => symbol is KindSymbol { Kind: EventKind },
        ["a name"] = symbol => symbol is FactSymbol or SpellSymbol or DefineSymbol or BuiltInSymbol { Name: "age" or "parity" },
        ["a defined name or a spell"] = symbol => symbol is SpellSymbol or DefineSymbol,
        ["`cows`, `heifers`, `females` or a defined name"] = symbol => symbol is DefineSymbol or BuiltInSymbol { Name: "cows" or "heifers" or "females" },
        ["the name of a date"] = symbol => symbol is DateSymbol or BuiltInSymbol { Name: "birth" },
        ["the name of a date, such as `collection`"] = symbol => symbol is DateSymbol,
        ["the name of a fact"] = symbol => symbol is FactSymbol { Fact.Type: FactType.Number or FactType.Amount },
        ["a declared name"] = symbol => symbol is KindSymbol or FactSymbol,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Lists = new[]
    {
        "the name of a list, such as `recipients`", "`females`, `cows`, `heifers` or another list",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Free = new[] { Value, "a kind of record" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a name of the namespace may stand where the grammar asks for one. What a label that is not
    /// known here means is left to whoever binds the line: then every name may.</summary>
    public static bool Takes(Wanted wanted, Symbol symbol) =>
        Symbols.TryGetValue(wanted.Label, out var takes) ? takes(symbol) : !Lists.Contains(wanted.Label) && !Free.Contains(wanted.Label);

    /// <summary>Whether the grammar asks for the name of a list.</summary>
    public static bool IsList(Wanted wanted) => Lists.Contains(wanted.Label);

    /// <summary>Whether the grammar asks for the name of a rule or, in its own line, of a preference.</summary>
    public static bool IsRule(Wanted wanted, string head) =>
        wanted is { Kind: LeafKind.Text, Label: "the rule's name in quotes" } || (wanted.Kind == LeafKind.Text && head == "prefer");

    /// <summary>Whether a line with this first word declares the rule that it names.</summary>
    public static bool DeclaresRule(string head) => head is "rule" or "safety" or "prefer";
}
