namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>safety expectation "A calf has a father"</c>.</summary>
internal sealed record ExpectationLine(TextSyntax Name, bool IsSafety) : HeadLine;

/// <summary>On which side of an entry another one is looked for.</summary>
internal enum ComesSide
{
    /// <summary>The other one came before: <c>comes 200 to 320 days after mating</c>.</summary>
    After,

    /// <summary>The other one comes later: <c>comes at most 10 months before calving</c>.</summary>
    Before,
}

/// <summary><c>every calving comes 200 to 320 days after mating or transfer</c>.</summary>
/// <param name="Entry">An event, or an answer and its test.</param>
/// <param name="From">The nearer limit; null for <c>at most</c>.</param>
/// <param name="To">The farther limit.</param>
/// <param name="Side">Before or after.</param>
/// <param name="Others">Events, answers and spells; any of them will do.</param>
internal sealed record EveryComesLine(
    NameSyntax Entry, DurationSyntax? From, DurationSyntax To, ComesSide Side, ImmutableArray<NameSyntax> Others) : BodyLine
{
    public override string? OnlyOnce => "every";
}

/// <summary><c>at least 1 lameness a year for every 20 cows</c>.</summary>
internal sealed record RateLine(NumberSyntax Count, NameSyntax Kind, NumberSyntax Cows) : BodyLine
{
    public override string? OnlyOnce => "at least ... a year";
}

/// <summary><c>else mating, transfer are not complete, over 2%</c> or <c>... for her</c>.</summary>
/// <param name="Kinds">Whose promises fall.</param>
/// <param name="ForHer">Whether only for the animal that fails.</param>
/// <param name="Over">Above which share of failing entries; null where <paramref name="ForHer"/>, or for a rate.</param>
internal sealed record ElseLine(ImmutableArray<NameSyntax> Kinds, bool ForHer, NumberSyntax? Over) : BodyLine
{
    public override string? OnlyOnce => "else";
}
