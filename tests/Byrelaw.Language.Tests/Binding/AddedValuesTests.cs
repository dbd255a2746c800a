namespace Byrelaw.Language.Tests.Binding;

/// <summary><c>add wild, flighty to temperament</c>: further values of a fact that another file declares.</summary>
public sealed class AddedValuesTests
{
    private const string Words = "fact temperament is one of quiet, dangerous\n";

    [Fact]
    public void Every_file_may_name_them_and_so_may_the_records() =>
        Rules.Good(Words + "add wild, \"sent to the works\" to temperament\n").Vocabulary.FindFact("temperament")!.Values.ShouldBe(["quiet", "dangerous", "wild", "sent to the works"]);

    [Fact]
    public void What_is_not_known_of_them_is_part_of_what_a_rule_means()
    {
        var without = Text("");
        var with = Text("add wild to temperament\n");

        without.ShouldContain("needs temperament is not dangerous\n");
        with.ShouldContain("needs temperament is not dangerous (not known where it is wild)\n");
    }

    [Theory]
    [InlineData("add quiet to temperament", "B0506")]
    [InlineData("add wild, wild to temperament", "B0506")]
    [InlineData("add wild to BVD virus", "B0517")]
    [InlineData("add wild to official identity", "B0517")]
    [InlineData("add wild to calving", "B0517")]
    [InlineData("add wild to temperamint", "B0204")]
    [InlineData("add to temperament", "B0402")]
    [InlineData("add wild temperament", "B0402")]
    public void What_cannot_be_added_is_told(string line, string code) => Rules.Read(Rules.Words + Words + line + "\n").Problems.Select(problem => problem.Code).ShouldContain(code);

    private static string Text(string added) => CanonicalText.Of(Rules.Read(new RuleFilesInMemory()
        .Add("base.byre", Words + "rules for recipients\nrule \"Handled\"\n  needs temperament is not dangerous\n  because \"x\"\n  source \"x\"\n")
        .Add("farm.byre", "use \"base.byre\"\n" + added)).Rulebook);
}
