namespace Byrelaw.Checking.Examples;

/// <summary>What came of trying one example.</summary>
/// <param name="Example">The example.</param>
/// <param name="Problems">What is wrong with its records; then nothing was tried.</param>
/// <param name="Expectations">What came of each expectation.</param>
public sealed record ExampleOutcome(Example Example, ImmutableArray<Diagnostic> Problems, ImmutableArray<ExpectationOutcome> Expectations)
{
    /// <summary>Whether all of it is as expected.</summary>
    public bool Holds => Problems.IsEmpty && Expectations.All(expectation => expectation.Failure is null);
}

/// <summary>What came of one expectation.</summary>
/// <param name="Expectation">What is expected.</param>
/// <param name="Failure">What came out instead, at the place of the expectation; null where it is as expected.</param>
/// <param name="Draft">Her answer: one list with one animal. For a rule, a preference or a defined condition the list holds that alone.</param>
public sealed record ExpectationOutcome(Expectation Expectation, Diagnostic? Failure, Draft Draft)
{
    /// <summary>What the answer rests on.</summary>
    public AnimalJudgement Animal => Draft.Lists[0].Animals[0];

    /// <summary>The answer of the rule, preference or condition; null for a list.</summary>
    public RuleJudgement? Rule => Expectation.Of == ExpectationOf.List ? null : Animal.Rules.First(rule => rule.Gate == Gate.None);
}
