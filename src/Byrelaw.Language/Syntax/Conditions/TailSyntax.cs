namespace Byrelaw.Language.Syntax.Conditions;

/// <summary>A part of a condition after its subject.</summary>
internal abstract record TailSyntax : SyntaxNode;

/// <summary>A demand on a number or an amount: <c>at least 7 umol/L</c>, <c>between 4.0 and 5.5</c>.</summary>
internal sealed record CompareSyntax(Comparison Comparison, AmountSyntax Low, AmountSyntax? High) : TailSyntax;

/// <summary>A number, with its unit or with the fact it is a share of.</summary>
/// <param name="Value">The number; per cent where <paramref name="IsPercent"/>.</param>
/// <param name="Unit">As written; null for none.</param>
/// <param name="IsPercent">Whether a per cent sign stands there.</param>
/// <param name="Of">Of which fact; null for none.</param>
internal sealed record AmountSyntax(NumberSyntax Value, UnitSyntax? Unit, bool IsPercent, NameSyntax? Of) : SyntaxNode;

/// <summary><c>is negative</c>, <c>is not one of A, B</c>.</summary>
internal sealed record IsSyntax(bool Not, ImmutableArray<ValueSyntax> Values) : TailSyntax
{
    /// <summary>Whether <c>or</c> stands between the values: <c>is Jersey or Friesian</c>.</summary>
    public bool IsJoinedByOr { get; init; }
}

/// <summary>A value after <c>is</c>: words, a number or a day.</summary>
internal sealed record ValueSyntax(string Text, NumberSyntax? Number, DateSyntax? Date) : SyntaxNode;

/// <summary><c>is recorded</c>, <c>is not recorded</c>.</summary>
internal sealed record RecordedSyntax(bool Not) : TailSyntax;

/// <summary><c>in the top 20% of the herd</c>.</summary>
internal sealed record TopSyntax(bool Not, NumberSyntax Percent, HerdGroup Group, bool WithValue) : TailSyntax;

/// <summary><c>between 18 and 24 days apart</c>.</summary>
internal sealed record ApartSyntax(CompareSyntax Compare) : TailSyntax;

/// <summary><c>of her mob</c>.</summary>
internal sealed record OfHerMobSyntax : TailSyntax;

/// <summary><c>of the last 3 results</c>.</summary>
internal sealed record OfTheLastSyntax(NumberSyntax Count) : TailSyntax;

/// <summary><c>from at least 5 animals</c>.</summary>
internal sealed record FromAnimalsSyntax(NumberSyntax Count) : TailSyntax;
