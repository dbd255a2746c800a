using Pidgin;

namespace Byrelaw.Language.Blocks;

/// <summary>Which grammar reads a line, by its first word and the block it stands in.</summary>
internal static class LineTable
{
    /// <summary>Lines that start a block.</summary>
    public static readonly FrozenDictionary<string, (BlockKind Kind, Parser<Token, LineSyntax> Grammar)> Heads =
        new Dictionary<string, (BlockKind Kind, Parser<Token, LineSyntax> Grammar)>
        {
            ["use"] = (BlockKind.Use, HeadLines.Use),
            ["event"] = (BlockKind.Word, Declarations.Event),
            ["measure"] = (BlockKind.Word, Declarations.Measure),
            ["test"] = (BlockKind.Word, Declarations.Test),
            ["fact"] = (BlockKind.Word, Declarations.Fact),
            ["call"] = (BlockKind.Word, Declarations.Call),
            ["add"] = (BlockKind.Word, Declarations.Add),
            ["spell"] = (BlockKind.Word, Declarations.Spell),
            ["define"] = (BlockKind.Define, HeadLines.Define),
            ["rules"] = (BlockKind.RulesFor, HeadLines.Rules),
            ["rule"] = (BlockKind.Rule, HeadLines.Rule),
            ["safety"] = (BlockKind.Rule, HeadLines.Safety),
            ["expectation"] = (BlockKind.Expectation, HeadLines.Expectation),
            ["hint"] = (BlockKind.Word, Declarations.Hint),
            ["prefer"] = (BlockKind.Prefer, HeadLines.Prefer),
            ["change"] = (BlockKind.Change, HeadLines.Change),
            ["drop"] = (BlockKind.Drop, HeadLines.Drop),
            ["waive"] = (BlockKind.Waive, HeadLines.Waive),
            ["accept"] = (BlockKind.Accept, AcceptLines.Accept),
            ["records"] = (BlockKind.Records, HeadLines.Records),
            ["from"] = (BlockKind.Source, SourceLines.From),
            ["programme"] = (BlockKind.Programme, HeadLines.Programme),
            ["visits"] = (BlockKind.Visits, PlanHeads.Visits),
            ["method"] = (BlockKind.Method, PlanHeads.Method),
            ["assume"] = (BlockKind.Assume, PlanHeads.Assume),
            ["task"] = (BlockKind.Task, PlanHeads.Task),
            ["done"] = (BlockKind.Done, PlanHeads.Done),
            ["stopped"] = (BlockKind.Stopped, PlanHeads.Stopped),
            ["yardstick"] = (BlockKind.Yardstick, PlanHeads.Yardstick),
            ["caution"] = (BlockKind.Caution, PlanHeads.Caution),
            ["example"] = (BlockKind.Example, HeadLines.Example),
        }.ToFrozenDictionary(line => line.Key, line => (line.Value.Kind, line.Value.Grammar.Before(Parser<Token>.End)));

    /// <summary>What block a line starts, and the grammar of its first line; null where it starts none.</summary>
    public static (BlockKind Kind, Parser<Token, LineSyntax> Grammar)? HeadOf(LogicalLine line, BlockKind? above) =>
        StartsOtherwise(line, above) || !Heads.TryGetValue(line.WordAt(0), out var head) ? null
        : line.WordAt(0) == "safety" && line.WordAt(1) == "expectation" ? SafetyExpectation
        : head;

    /// <summary>Whether a line starts a block.</summary>
    /// <param name="line">The line.</param>
    /// <param name="above">The block that it would end; null above the first.</param>
    public static bool StartsBlock(LogicalLine line, BlockKind? above) => Heads.ContainsKey(line.WordAt(0)) && !StartsOtherwise(line, above);

    /// <summary>Whether the first word of a line, which may start a block, starts another sort of line here.</summary>
    public static bool StartsOtherwise(LogicalLine line, BlockKind? above) => line.WordAt(0) switch
    {
        "change" => line.WordAt(1) == "in",
        "method" when above is BlockKind.Records or BlockKind.Source && SaysWhatBlankIs(line) => true,
        "records" => line.WordAt(1) == "to" && above == BlockKind.Example,
        _ => above == BlockKind.Source && SaysWhatAColumnIs(line),
    };

    /// <summary>Whether a line says where something stands; it starts with the thing's name, which may be any.</summary>
    public static bool SaysWhatAColumnIs(LogicalLine line) =>
        line.Tokens[0].Kind != TokenKind.Bullet && line.WordAt(0) != "leave" && !(line.WordAt(0) == "from" && line.Tokens.Length > 1 && line.Tokens[1].Kind == TokenKind.Text)
        && (Array.Exists(line.Tokens[1..], token => token.Is("is"))
            || Enumerable.Range(1, line.Tokens.Length - 1).Any(at => line.WordAt(at) == "in" && at + 1 < line.Tokens.Length && line.Tokens[at + 1].Kind == TokenKind.Text));

    /// <summary>Whether a line below a source goes on with <c>records</c>.</summary>
    public static bool GoesOnWithRecords(LogicalLine line) =>
        line.WordAt(0) != "leave" ? Records.ContainsKey(line.WordAt(0)) : line.WordAt(2) is not ("rows" or "columns");

    /// <summary>Whether a line of <c>records</c> says what a blank cell of a detail means; it starts with the detail's name.</summary>
    public static bool SaysWhatBlankIs(LogicalLine line) => line.WordAt(1) is "is" or "of" && line.Tokens.Any(token => token.Is("is"));

    private static readonly (BlockKind Kind, Parser<Token, LineSyntax> Grammar) SafetyExpectation =
        (BlockKind.Expectation, HeadLines.SafetyExpectation.Before(Parser<Token>.End));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Nothing = Table([]);

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Rule = Table(
        ("applies", RuleLines.AppliesTo), ("needs", RuleLines.Needs), ("if", RuleLines.IfNotKnown), ("on", RuleLines.OnTheDay),
        ("because", RuleLines.Because), ("source", RuleLines.Source), ("agreed", RuleLines.AgreedBy));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Prefer = Table(
        ("counts", RuleLines.Counts), ("because", RuleLines.Because), ("source", RuleLines.Source), ("agreed", RuleLines.AgreedBy));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Change = Table(
        [.. Rule.Select(line => (line.Key, line.Value)), ("counts", RuleLines.Counts)]);

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Drop = Table(
        ("because", RuleLines.Because), ("agreed", RuleLines.AgreedBy));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Waive = Table(
        ("until", RuleLines.Until), ("because", RuleLines.Because), ("agreed", RuleLines.AgreedBy));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Records = Table(
        ("up", FarmLines.UpTo), ("complete", FarmLines.CompleteFor), ("no", FarmLines.NoneOnFarm), ("leave", FarmLines.LeaveOut),
        ("same", FarmLines.SameAnimal), ("not", FarmLines.NotTheSameAnimal),
        ("because", RuleLines.Because), ("agreed", RuleLines.AgreedBy));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Source = Table(
        ("dates", SourceLines.Dates), ("decimal", SourceLines.DecimalComma), ("thousands", SourceLines.Thousands), ("short", SourceLines.ShortYears), ("leave", SourceLines.LeaveOut));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Expectation = Table(
        ("every", ExpectationLines.Every), ("at", ExpectationLines.Rate), ("else", ExpectationLines.Else),
        ("because", RuleLines.Because), ("source", RuleLines.Source));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Programme = Table(
        ("collection", FarmLines.Collection), ("transfer", Parser.OneOf(Parser.Try(AimLines.TransferCostsShared), FarmLines.Transfer)), ("date", FarmLines.Date), ("choose", FarmLines.Choose),
        ("wants", AimLines.Wants), ("budget", AimLines.Budget), ("agreed", RuleLines.AgreedBy), ("embryos", AimLines.Embryos), ("tank", AimLines.Tank),
        ("recipients", AimLines.RecipientDays), ("prepare", AimLines.Prepare), ("semen", AimLines.SemenUsed), ("costs", AimLines.CostsShared), ("treatment", AimLines.TreatmentCostsShared), ("calves", AimLines.CalfBreeds),
        ("calve", AimLines.CalveBy), ("region", AimLines.Region), ("holidays", AimLines.Holidays),
        ("holiday", AimLines.Holiday));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Visits = Table(
        ("every", TaskLines.Schedule), ("on", TaskLines.Schedule), ("not", TaskLines.NotOn), ("because", RuleLines.Because));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Method = Table(
        ("suits", MethodLines.Suits), ("on", RuleLines.OnTheDay), ("day", MethodLines.Step), ("counts", MethodLines.CountsAsHeat), ("in", MethodLines.InHeat), ("heat", MethodLines.HeatSeen),
        ("accepted", MethodLines.Accepted), ("cycles", MethodLines.Cycles), ("if", MethodLines.Again), ("flushed", MethodLines.Flushed),
        ("costs", MethodLines.Costs), ("for", MethodLines.For), ("because", RuleLines.Because), ("source", RuleLines.Source));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> PlanTask = Table(
        ("for", MethodLines.For), ("each", TaskLines.EachSession), ("decided", TaskLines.DecidedBy), ("if", TaskLines.IfStopped), ("due", TaskLines.Due), ("not", TaskLines.NotBeforeOrNeeded), ("results", TaskLines.ResultsTake), ("takes", TaskLines.Takes),
        ("settles", TaskLines.Settles), ("costs", MethodLines.Costs), ("because", RuleLines.Because), ("source", RuleLines.Source));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Assume = Table(
        ("because", RuleLines.Because), ("source", RuleLines.Source), ("agreed", RuleLines.AgreedBy));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Yardstick = Table(("because", RuleLines.Because), ("source", RuleLines.Source));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Caution = Table(("source", RuleLines.Source));

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Example = Table(
        [
            .. new[] { "cow", "heifer", "female", "male", "animal" }.Select(word => (word, ExampleLines.Animal)),
            ("mob", ExampleLines.InMob), ("rank", ExampleLines.Rank), ("not", ExampleLines.NotKept), ("judged", ExampleLines.Judged),
            ("records", ExampleLines.RecordsTo), ("expect", ExpectLines.Expect),
        ]);

    private static readonly FrozenDictionary<string, Parser<Token, LineSyntax>> Any = Table(
        [.. new[] { Change, Waive, Records, Programme }.SelectMany(table => table).Where(line => line.Key is not ("no" or "not")).DistinctBy(line => line.Key).Select(line => (line.Key, line.Value))]);

    /// <summary>The blocks that a line with this first word belongs in.</summary>
    public static IEnumerable<BlockKind> HomesOf(string head) =>
        Enum.GetValues<BlockKind>().Where(kind => kind != BlockKind.Unreadable && Bodies(kind).ContainsKey(head));

    /// <summary>Lines that may stand in a block, by first word.</summary>
    public static FrozenDictionary<string, Parser<Token, LineSyntax>> Bodies(BlockKind kind) => kind switch
    {
        BlockKind.Rule => Rule,
        BlockKind.Prefer => Prefer,
        BlockKind.Change => Change,
        BlockKind.Drop or BlockKind.Accept or BlockKind.Stopped => Drop,
        BlockKind.Waive => Waive,
        BlockKind.Records => Records,
        BlockKind.Source => Source,
        BlockKind.Expectation => Expectation,
        BlockKind.Programme => Programme,
        BlockKind.Visits => Visits,
        BlockKind.Method => Method,
        BlockKind.Task => PlanTask,
        BlockKind.Assume => Assume,
        BlockKind.Yardstick => Yardstick,
        BlockKind.Caution => Caution,
        BlockKind.Example => Example,
        BlockKind.Unreadable => Any,
        _ => Nothing,
    };

    /// <summary>The grammar of a line in a block; null where the block has none that starts so. A change may be one of a rule, of a preference or of what is
    /// expected of the records, and the lines of all three may start alike.</summary>
    public static Parser<Token, LineSyntax>? BodyOf(BlockKind kind, LogicalLine line) =>
        Bodies(kind).TryGetValue(line.WordAt(0), out var grammar) ? grammar
        : kind == BlockKind.Change && SaysWhatIsExpected(line) ? Expectation[line.WordAt(0)]
        : null;

    private static bool SaysWhatIsExpected(LogicalLine line) => line.WordAt(0) switch
    {
        "every" => Array.Exists(line.Tokens, token => token.Is("comes")),
        "at" => line.Tokens[^1].Is("cows"),
        "else" => true,
        _ => false,
    };

    /// <summary>Whether a condition may stand on a line of its own in a block.</summary>
    public static bool TakesCondition(BlockKind kind) => kind is BlockKind.Define or BlockKind.Prefer or BlockKind.Change;

    /// <summary>Whether a list's lines may stand in a block.</summary>
    public static bool TakesBullets(BlockKind kind) => TakesCondition(kind) || kind is BlockKind.Rule or BlockKind.Method or BlockKind.Source or BlockKind.Unreadable;

    /// <summary>Whether a block is more than its head line, so that a line below can break it.</summary>
    public static bool HasBody(BlockKind kind) => Bodies(kind).Count > 0 || kind == BlockKind.Define;

    private static FrozenDictionary<string, Parser<Token, LineSyntax>> Table(params (string Head, Parser<Token, LineSyntax> Grammar)[] lines) =>
        lines.ToFrozenDictionary(line => line.Head, line => line.Grammar.Before(Parser<Token>.End));
}
