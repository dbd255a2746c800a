using System.Text.RegularExpressions;

namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>
/// "For values that a file adds, a condition of a file that does not see the `add` is not known where it says `is not` or stands under `not` or `none of`, and false where it says `is`": so no rule
/// passes a wild cow whose author never thought of one.
/// </summary>
public sealed class AddedValuesTests
{
    private const string Words = """
        event calving
        fact temperament is one of quiet, dangerous
        define gentle
          temperament is quiet
        define fierce
          temperament is dangerous

        """;

    /// <summary>The base has the rule; the farm adds <c>wild</c>, which the base does not see. Cow 1 is quiet, 2 dangerous, 3 wild.</summary>
    [Theory]
    [InlineData("needs temperament is quiet", "met, not met, not met")]
    [InlineData("needs temperament is one of quiet, dangerous", "met, met, not met")]
    [InlineData("needs temperament is not dangerous", "met, not met, not known")]
    [InlineData("needs none of\n    - temperament is dangerous", "met, not met, not known")]
    [InlineData("needs none of\n    - temperament is not quiet", "met, not met, not known")]
    [InlineData("needs any of\n    - temperament is quiet\n    - parity at least 20", "met, not met, not met")]
    [InlineData("needs gentle", "met, not met, not met")]
    [InlineData("needs not fierce", "met, not met, not known")]
    [InlineData("needs none of\n    - fierce", "met, not met, not known")]
    [InlineData("applies to fierce\n  needs parity at least 20", "does not apply, not met, not known")]
    // What the base passes without an answer it does not pass where one stands there that it does not know.
    [InlineData("needs temperament is not dangerous\n  if not known pass", "met, not met, not known")]
    public void A_rule_of_a_file_that_does_not_see_it_never_passes_a_wild_cow(string rule, string answers) =>
        Answers(("base.byre", Words + Rules(rule)), ("farm.byre", "use \"base.byre\"\nadd wild to temperament\n" + Farm)).ShouldBe(answers);

    /// <summary>The farm's own rules see what the farm adds, and so do those of a layer above it.</summary>
    [Theory]
    [InlineData("needs temperament is not dangerous", "met, not met, met")]
    [InlineData("needs temperament is wild", "not met, not met, met")]
    [InlineData("needs none of\n    - temperament is wild", "met, met, not met")]
    // The define is the base's, and never thought of wild cows.
    [InlineData("needs not fierce", "met, not met, not known")]
    public void A_rule_of_a_file_that_sees_it_answers_plainly(string rule, string answers)
    {
        Answers(("base.byre", Words), ("farm.byre", "use \"base.byre\"\nadd wild to temperament\n" + Rules(rule) + Farm)).ShouldBe(answers);
        Answers(("base.byre", Words), ("practice.byre", "use \"base.byre\"\nadd wild to temperament\n"), ("farm.byre", "use \"practice.byre\"\n" + Rules(rule) + Farm)).ShouldBe(answers);
    }

    /// <summary>A change of a safety rule adds: what it asked before is still asked, also where both are written alike.</summary>
    [Fact]
    public void A_change_that_sees_it_does_not_take_the_doubt_of_what_was_asked_before() => Answers(
        ("base.byre", Words + Rules("needs temperament is not dangerous").Replace("rule \"Q\"", "safety rule \"Q\"", StringComparison.Ordinal)),
        ("farm.byre", "use \"base.byre\"\nadd wild to temperament\nchange \"Q\"\n  needs temperament is not dangerous\n  because \"x\"\n  agreed by \"vet\" on 2026-01-01\n" + Farm)).ShouldBe("met, not met, not known");

    private const string Farm = """
        records "records"
          up to 2026-10-04
          complete for calving since 2020-01-01
        programme "P"
          date first look on 2026-10-04
          choose asked from females, judged on first look, for looking only

        """;

    private static string Rules(string rule) => $"rules for asked\nrule \"Q\"\n  {rule}\n  because \"x\"\n  source \"x\"\n";

    private static string Answers(params (string Name, string Text)[] files)
    {
        var reading = RulebookReader.Read("farm.byre", new InMemory(files))!;
        reading.Problems.Where(problem => problem.Severity == Byrelaw.Language.Diagnostics.Severity.Error).Select(problem => problem.Message).ShouldBeEmpty();
        var herd = HerdReader.Read(
            "animal,born,sex,temperament\n1,2022-08-01,F,quiet\n2,2022-08-01,F,dangerous\n3,2022-08-01,F,wild\n"u8.ToArray(), "date,animal,kind\n2025-08-01,1,calving\n"u8.ToArray(),
            reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        var said = new Judge(reading.Rulebook, herd).JudgeAll().Lists.Single().Animals.OrderBy(animal => animal.Number, StringComparer.Ordinal)
            .Select(animal => animal.Rules.Single(rule => rule.Name == "Q").Answer.ToString());
        return string.Join(", ", said.Select(answer => Regex.Replace(answer, "(?<=.)([A-Z])", " $1").ToLowerInvariant()));
    }

    private sealed class InMemory((string Name, string Text)[] files) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => Array.Find(files, file => file.Name == path) is { Text: { } text } ? Encoding.UTF8.GetBytes(text) : null;
    }
}
