namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A fact that is a date: <c>dam genomic date is 2026-02-01</c>.</summary>
public sealed record FactDateCondition(Fact Fact, LocalDate Date, bool IsNot) : Condition
{
    /// <inheritdoc />
    public override string Subject => $"{Fact.Name} is {(IsNot ? "not " : "")}{LocalDatePattern.Iso.Format(Date)}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Fact(Fact) is { } fact ? this with { Fact = fact } : null;
}
