namespace Byrelaw.Language.Syntax.Lines;

/// <summary>A line inside a block.</summary>
internal abstract record BodyLine : LineSyntax
{
    /// <summary>The words by which people know the line; a second one in a block is an error. Null where several may stand.</summary>
    public virtual string? OnlyOnce => null;
}

/// <summary><c>applies to cows</c>.</summary>
internal sealed record AppliesToLine(NameSyntax Audience) : BodyLine
{
    public override string? OnlyOnce => "applies to";
}

/// <summary><c>needs CONDITION</c> or <c>needs any of</c>.</summary>
internal sealed record NeedsLine(ConditionSyntax Condition) : BodyLine
{
    public override string? OnlyOnce => "needs";
}

/// <summary>A condition on a line of its own.</summary>
internal sealed record ConditionLine(ConditionSyntax Condition) : BodyLine;

/// <summary><c>- CONDITION</c>.</summary>
internal sealed record BulletLine(ConditionSyntax Condition) : BodyLine;

/// <summary><c>if not known ask</c>.</summary>
internal sealed record IfNotKnownLine(IfNotKnown Instead) : BodyLine
{
    public override string? OnlyOnce => "if not known";
}

/// <summary><c>on the day</c>.</summary>
internal sealed record OnTheDayLine : BodyLine
{
    public override string? OnlyOnce => "on the day";
}

/// <summary><c>because "..."</c>.</summary>
internal sealed record BecauseLine(TextSyntax Reason) : BodyLine
{
    public override string? OnlyOnce => "because";
}

/// <summary><c>source "..."</c>.</summary>
internal sealed record SourceLine(TextSyntax Source) : BodyLine
{
    public override string? OnlyOnce => "source";
}

/// <summary><c>agreed by "herd vet" on 2026-06-14</c>.</summary>
internal sealed record AgreedByLine(ImmutableArray<TextSyntax> By, DateSyntax On) : BodyLine
{
    public override string? OnlyOnce => "agreed by";
}

/// <summary><c>counts 2</c>.</summary>
internal sealed record CountsLine(NumberSyntax Points) : BodyLine
{
    public override string? OnlyOnce => "counts";
}

/// <summary><c>until 2026-10-31</c>.</summary>
internal sealed record UntilLine(DateSyntax Until) : BodyLine
{
    public override string? OnlyOnce => "until";
}
