namespace Byrelaw.Language.Blocks;

/// <summary>What a block is; every block starts with a line whose first word says so.</summary>
internal enum BlockKind
{
    /// <summary><c>use</c>.</summary>
    Use,

    /// <summary><c>event</c>, <c>measure</c>, <c>test</c>, <c>fact</c>, <c>spell</c>, <c>call</c>.</summary>
    Word,

    /// <summary><c>define</c>.</summary>
    Define,

    /// <summary><c>rules for</c>.</summary>
    RulesFor,

    /// <summary><c>rule</c>, <c>safety rule</c>.</summary>
    Rule,

    /// <summary><c>prefer</c>.</summary>
    Prefer,

    /// <summary><c>change</c>.</summary>
    Change,

    /// <summary><c>drop</c>.</summary>
    Drop,

    /// <summary><c>waive</c>.</summary>
    Waive,

    /// <summary><c>accept</c>.</summary>
    Accept,

    /// <summary><c>expectation</c> and <c>safety expectation</c>.</summary>
    Expectation,

    /// <summary><c>records</c>.</summary>
    Records,

    /// <summary><c>from</c>, below <c>records</c>.</summary>
    Source,

    /// <summary><c>programme</c>.</summary>
    Programme,

    /// <summary><c>visits</c>.</summary>
    Visits,

    /// <summary><c>method</c>.</summary>
    Method,

    /// <summary><c>assume</c>.</summary>
    Assume,

    /// <summary><c>task</c>.</summary>
    Task,

    /// <summary><c>done</c>.</summary>
    Done,

    /// <summary><c>stopped session</c>.</summary>
    Stopped,

    /// <summary><c>yardstick</c>.</summary>
    Yardstick,

    /// <summary><c>caution</c>.</summary>
    Caution,

    /// <summary><c>example</c>.</summary>
    Example,

    /// <summary>A line that could not be read, and the lines up to the next readable head.</summary>
    Unreadable,
}
