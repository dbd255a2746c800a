namespace Byrelaw.Language.Diagnostics;

/// <summary>What blocks are called in messages.</summary>
internal static class BlockWords
{
    /// <summary>The block's name with its article.</summary>
    public static string Of(BlockKind kind) => kind switch
    {
        BlockKind.Use => "a `use`",
        BlockKind.Word => "a declaration",
        BlockKind.Define => "a `define`",
        BlockKind.RulesFor => "`rules for`",
        BlockKind.Rule => "a `rule`",
        BlockKind.Prefer => "a `prefer`",
        BlockKind.Change => "a `change`",
        BlockKind.Drop => "a `drop`",
        BlockKind.Waive => "a `waive`",
        BlockKind.Expectation => "an `expectation`",
        BlockKind.Accept => "an `accept`",
        BlockKind.Records => "`records`",
        BlockKind.Source => "a `from`",
        BlockKind.Programme => "a `programme`",
        BlockKind.Visits => "`visits`",
        BlockKind.Method => "a `method`",
        BlockKind.Assume => "an `assume`",
        BlockKind.Task => "a `task`",
        BlockKind.Done => "a `done`",
        BlockKind.Stopped => "a `stopped session`",
        BlockKind.Yardstick => "a `yardstick`",
        BlockKind.Caution => "a `caution`",
        BlockKind.Example => "an `example`",
        _ => "what could not be read",
    };
}
