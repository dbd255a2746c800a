namespace Byrelaw.Language.Syntax.Plans;

/// <summary>What a number rests on.</summary>
internal abstract record EvidenceSyntax : SyntaxNode;

/// <summary><c>weight 40</c>.</summary>
internal sealed record WeightSyntax(NumberSyntax Animals) : EvidenceSyntax;

/// <summary><c>spread 6</c>.</summary>
internal sealed record SpreadSyntax(NumberSyntax Value) : EvidenceSyntax;

/// <summary><c>from 36 of 80 transfers</c>.</summary>
internal sealed record CountedSyntax(NumberSyntax Hits, NumberSyntax Of, NameSyntax? What) : EvidenceSyntax;

/// <summary><c>on day 2 20%</c>: a part of all heats.</summary>
internal sealed record OnDaySyntax(NumberSyntax Day, NumberSyntax Percent) : EvidenceSyntax;

/// <summary>A per cent with what it rests on.</summary>
internal sealed record ShareSyntax(NumberSyntax Percent, ImmutableArray<EvidenceSyntax> Evidence) : SyntaxNode;

/// <summary><c>55 NZD</c>.</summary>
internal sealed record MoneySyntax(NumberSyntax Amount, UnitSyntax Currency) : SyntaxNode;
