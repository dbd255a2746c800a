namespace Byrelaw.Language.Tests.Documents;

/// <summary>The shared rule files read without a problem, and keep their promises.</summary>
public sealed class BaseRulesTests
{
    public static TheoryData<string> Files() =>
        [.. Directory.EnumerateFiles(Repository.At("rulesets"), "*.byre").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_base_file_has_no_problems(string file) => Read(file).Problems.ShouldBeEmpty();

    [Theory]
    [InlineData("recipients.byre")]
    [InlineData("treatment.byre")]
    [InlineData("donors.byre")]
    [InlineData("trace-elements.byre")]
    [InlineData("neospora.byre")]
    [InlineData("leptospirosis.byre")]
    [InlineData("condition.byre")]
    [InlineData("heifer-weight.byre")]
    public void Every_base_rule_says_why_and_where_its_number_comes_from(string file)
    {
        var rulebook = Read(file).Rulebook;

        rulebook.Rules.ShouldNotBeEmpty();
        rulebook.Rules.Where(rule => string.IsNullOrWhiteSpace(rule.Because) || string.IsNullOrWhiteSpace(rule.Source))
            .Select(rule => rule.Name).ShouldBeEmpty();
        rulebook.Prefers.Where(prefer => string.IsNullOrWhiteSpace(prefer.Because) || string.IsNullOrWhiteSpace(prefer.Source))
            .Select(prefer => prefer.Name).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("recipients.byre")]
    [InlineData("treatment.byre")]
    [InlineData("donors.byre")]
    public void Not_in_calf_is_a_safety_rule_of_every_list(string file) =>
        Read(file).Rulebook.Rules.Where(rule => rule.IsSafety).Select(rule => rule.Name)
            .ShouldContain(name => name.Contains("not in calf", StringComparison.OrdinalIgnoreCase));

    private static RulebookReading Read(string file) =>
        RulebookReader.Read(Repository.At("rulesets/" + file), new DiskFiles())!;
}
