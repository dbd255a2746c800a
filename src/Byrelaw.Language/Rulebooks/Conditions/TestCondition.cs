namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A test's latest result: <c>latest BVD virus is negative</c>.</summary>
/// <param name="Test">Which test.</param>
/// <param name="Windows">None, one or two.</param>
/// <param name="Answers">Places in <see cref="TestKind.Answers"/>.</param>
/// <param name="IsNot">True for <c>is not</c>.</param>
public sealed record TestCondition(TestKind Test, ImmutableArray<Window> Windows, ImmutableArray<int> Answers, bool IsNot) : Condition(Windows)
{
    /// <inheritdoc />
    public override string Subject => $"latest {Test.Name} is {(IsNot ? "not " : "")}{string.Join(" or ", Answers.Select(answer => Test.Answers[answer]))}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        if (others.Kind(Test) is not TestKind found)
        {
            return null;
        }

        var answers = Answers.Select(answer => OtherParts.Answer(Test, answer, found)).ToList();
        return answers.Contains(null) ? null : this with { Test = found, Answers = [.. answers.OfType<int>()] };
    }
}
