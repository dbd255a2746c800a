namespace Byrelaw.Language.Tests.Binding;

/// <summary><c>call</c> takes every name, built-in ones and answers too.</summary>
public sealed class CalledOtherwiseTests
{
    private const string Calls = "call parity also lactation\ncall age also years old\ncall mob also paddock\ncall heifers also maidens\ncall empty also open\n";

    [Theory]
    [InlineData("lactation at most 5", "parity at most 5")]
    [InlineData("years old at least 14 months", "age at least 14 months")]
    [InlineData("latest pregnancy test since last calving is open", "latest pregnancy test since last calving is empty")]
    [InlineData("no open pregnancy test since last calving", "no empty pregnancy test since last calving")]
    public void What_is_said_is_what_is_meant(string said, string meant) => CanonicalText.Of(Rules.Condition(said, Calls)).ShouldBe(CanonicalText.Of(Rules.Condition(meant)));

    [Theory]
    [InlineData("PD-")]
    [InlineData("not in calf")]
    [InlineData("E")]
    [InlineData("N.P.")]
    [InlineData("vacía")]
    public void What_clearly_says_that_none_was_found_is_another_name_for_empty(string name) =>
        CanonicalText.Of(Rules.Condition($"latest pregnancy test since last calving is \"{name}\"", $"call empty also \"{name}\"")).ShouldBe("latest pregnancy test since last calving is empty");

    [Fact]
    public void It_is_printed_and_reads_back_the_same()
    {
        var rulebook = Rules.Good(Rules.Words + Calls);
        rulebook.Vocabulary.FindKind("paddock").ShouldBe(rulebook.Vocabulary.MobMove);
        var text = CanonicalText.Of(rulebook);
        text.ShouldContain("call empty also open\n");
        CanonicalText.Of(Rules.Good(text)).ShouldBe(text);
    }

    [Theory]
    [InlineData("call parity also calving", "B0201")]
    [InlineData("call empty also pregnant", "B0506")]
    [InlineData("call empty also \"in calf\"", "B0516")]
    [InlineData("call empty also positive", "B0516")]
    [InlineData("call empty also \"PD+\"", "B0516")]
    [InlineData("call empty also \"not empty\"", "B0516")]
    [InlineData("call empty also P", "B0516")]
    [InlineData("call empty also \"6 months\"", "B0516")]
    [InlineData("call empty also holding", "B0516")]
    [InlineData("call empty also \"empty?\"", "B0516")]
    [InlineData("call her mob also mates", "B0205")]
    public void A_name_that_is_taken_or_says_something_else_is_told(string call, string code) =>
        Rules.Read(Rules.Words + call + "\n").Problems.Select(problem => problem.Code).ShouldContain(code);
}
