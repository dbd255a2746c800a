namespace Byrelaw.Language.Tests.Canonical;

public sealed class CanonicalRoundTripTests
{
    [Fact]
    public void What_is_printed_reads_back_to_what_is_printed() => RandomRules.File.Hold(
        text =>
        {
            var rulebook = Read(text).ShouldNotBeNull(text);
            var canonical = CanonicalText.Of(rulebook);
            var again = Read(canonical).ShouldNotBeNull(canonical);
            CanonicalText.Of(again).ShouldBe(canonical);
            again.Rules.Length.ShouldBe(rulebook.Rules.Length);
            again.Rules.ShouldAllBe(rule => !rule.IsBroken);
        },
        count: 2_000);

    private static Byrelaw.Language.Rulebooks.Rulebook? Read(string text)
    {
        var reading = Rules.Read(text);
        DiagnosticText.Of(reading.Problems.Where(problem => problem.Severity == Severity.Error)).ShouldBe("", text);
        return reading.Rulebook;
    }
}
