namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>day 7 evening "Remove the insert", 60 hours after day 4, device out</c>.</summary>
internal sealed record StepLine(NumberSyntax Day, DayPart? Part, TextSyntax Text, NumberSyntax? Hours, NumberSyntax? AfterDay, DeviceMove? Device) : BodyLine;

/// <summary><c>suits between 6 and 16 days since last heat</c>.</summary>
internal sealed record SuitsLine(ConditionSyntax Condition) : BodyLine
{
    public override string? OnlyOnce => "suits";
}

/// <summary><c>counts as heat on day 9</c>.</summary>
internal sealed record CountsAsHeatLine(NumberSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "counts as heat";
}

/// <summary><c>in heat 70%, on day 2 20%, day 3 45%</c>.</summary>
internal sealed record InHeatLine(ShareSyntax Share) : BodyLine
{
    public override string? OnlyOnce => "in heat";
}

/// <summary><c>heat seen 85%</c>.</summary>
internal sealed record HeatSeenLine(ShareSyntax Share) : BodyLine
{
    public override string? OnlyOnce => "heat seen";
}

/// <summary><c>accepted on the day 80%, weight 30</c>.</summary>
internal sealed record AcceptedLine(ShareSyntax Share) : BodyLine
{
    public override string? OnlyOnce => "accepted on the day";
}

/// <summary><c>cycles every 21 days</c>.</summary>
internal sealed record CyclesLine(DurationSyntax Every) : BodyLine
{
    public override string? OnlyOnce => "cycles";
}

/// <summary><c>if not seen by day 5, again on day 11 to 14</c>.</summary>
internal sealed record AgainLine(NumberSyntax NotSeenBy, NumberSyntax From, NumberSyntax? To) : BodyLine
{
    public override string? OnlyOnce => "if not seen";
}

/// <summary><c>flushed on day 15</c>.</summary>
internal sealed record FlushedLine(NumberSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "flushed";
}

/// <summary><c>costs 55 NZD per animal treated</c>; of a task <c>per animal</c>, <c>per sample</c> or nothing more.</summary>
internal sealed record CostsLine(MoneySyntax Amount, NameSyntax? Per) : BodyLine
{
    public override string? OnlyOnce => "costs";
}

/// <summary><c>for donors</c>.</summary>
internal sealed record ForLine(NameSyntax List) : BodyLine
{
    public override string? OnlyOnce => "for";
}

/// <summary><c>each session</c>.</summary>
internal sealed record EachSessionLine : BodyLine
{
    public override string? OnlyOnce => "each session";
}

/// <summary><c>decided by "farmer", "herd vet"</c>.</summary>
internal sealed record DecidedByLine(ImmutableArray<TextSyntax> Who) : BodyLine
{
    public override string? OnlyOnce => "decided by";
}

/// <summary><c>if stopped "Nobody is treated."</c>.</summary>
internal sealed record IfStoppedLine(TextSyntax What) : BodyLine
{
    public override string? OnlyOnce => "if stopped";
}

/// <summary><c>due 45 days before first transfer</c>.</summary>
internal sealed record DueLine(DayReferenceSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "due";
}

/// <summary><c>not before 60 days before collection</c>.</summary>
internal sealed record NotBeforeLine(DayReferenceSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "not before";
}

/// <summary><c>not needed</c>.</summary>
internal sealed record NotNeededLine : BodyLine
{
    public override string? OnlyOnce => "not needed";
}

/// <summary><c>results take 10 days</c>.</summary>
internal sealed record ResultsTakeLine(DurationSyntax Length) : BodyLine
{
    public override string? OnlyOnce => "results take";
}

/// <summary><c>takes 4 weeks</c>.</summary>
internal sealed record TakesLine(DurationSyntax Length) : BodyLine
{
    public override string? OnlyOnce => "takes";
}

/// <summary><c>settles "Copper of the mob", liver copper</c>.</summary>
/// <param name="What">Texts are rules; names are events, measures or tests.</param>
internal sealed record SettlesLine(ImmutableArray<SyntaxNode> What) : BodyLine;

/// <summary><c>every 14 days from ... to ...</c> or <c>on 2026-10-12, 2026-10-26</c>.</summary>
internal sealed record ScheduleLine(ScheduleSyntax Schedule) : BodyLine;

/// <summary><c>not on 2026-10-26, Sundays, holidays</c>.</summary>
internal sealed record NotOnLine(ImmutableArray<DayOffSyntax> Days) : BodyLine;
