namespace Byrelaw.Language.Syntax.Conditions;

/// <summary><c>with method natural</c>, right after a kind.</summary>
/// <param name="Detail">Which detail.</param>
/// <param name="Not">Whether <c>not</c> stands before the value.</param>
/// <param name="Values">Values; empty where a number is compared, or <c>recorded</c> stands there.</param>
/// <param name="Compare">A number, <c>at least 2</c>; null for others.</param>
internal sealed record FilterSyntax(NameSyntax Detail, bool Not, ImmutableArray<ValueSyntax> Values, CompareSyntax? Compare) : SyntaxNode;
