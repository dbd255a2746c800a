namespace Byrelaw.Language.Tests.Layers;

public sealed class AcceptanceTests
{
    private const string Base = """
        event calving  also calved
        define calvers
          at least 1 calving ever
        rules for recipients
        rule "Calved"
          needs calvers
          because "b"
        rule "Calved long"
          needs at least 56 days since last calving
          because "b"

        """;

    private const string Because = "\n  because \"We know.\"\n";

    [Theory]
    [InlineData("accept \"Calved\" as never met", TroubleSort.NeverMet, null)]
    [InlineData("accept \"Calved\" as always met", TroubleSort.AlwaysMet, null)]
    [InlineData("accept \"Calved\" as never met with \"CALVED LONG\"", TroubleSort.NeverMetWith, "Calved long")]
    [InlineData("accept \"Calved\" as implied by \"Calved long\"", TroubleSort.ImpliedBy, "Calved long")]
    [InlineData("accept \"Calved\" as never used", TroubleSort.NeverUsed, null)]
    [InlineData("accept \"Calved\" as out of reach", TroubleSort.OutOfReach, null)]
    [InlineData("accept \"Calved\" as passing what is not known", TroubleSort.PassesNotKnown, null)]
    [InlineData("accept \"Calved\" as testing early", TroubleSort.TestsEarly, null)]
    [InlineData("accept \"Calved\" as looking like \"calving\"", TroubleSort.LooksLike, "calving")]
    public void Each_trouble_has_its_words(string line, TroubleSort trouble, string? other)
    {
        var reading = Read(("base.byre", Base + line + Because));
        reading.Problems.ShouldNotContain(problem => problem.Severity == Severity.Error);
        var acceptance = reading.Rulebook.Acceptances.Single();
        (acceptance.Name, acceptance.Trouble, acceptance.Other, acceptance.Because).ShouldBe(("Calved", trouble, other, "We know."));
    }

    [Theory]
    [InlineData("calvers", "calvers")]
    [InlineData("calved", "Calved")]
    public void A_define_can_be_named_and_a_rule_comes_first(string name, string found) =>
        Read(("base.byre", Base + $"accept \"{name}\" as never used" + Because)).Rulebook.Acceptances.Single().Name.ShouldBe(found);

    [Fact]
    public void What_another_file_says_is_accepted_by_someone_on_a_day()
    {
        const string Farm = "use \"base.byre\"\naccept \"Calved\" as always met" + Because;
        var reading = Read(("farm.byre", Farm), ("base.byre", Base));
        reading.Problems.Single().Code.ShouldBe("B0704");
        reading.Rulebook.Acceptances.ShouldBeEmpty();

        var agreed = Farm + "  agreed by \"vet\" on 2026-06-14\n";
        Read(("farm.byre", agreed), ("base.byre", Base)).Rulebook.Acceptances.Single().Agreement!.On.ShouldBe(new LocalDate(2026, 6, 14));
        Read(new LocalDate(2026, 6, 13), ("farm.byre", agreed), ("base.byre", Base)).Rulebook.Acceptances.ShouldBeEmpty();
    }

    [Fact]
    public void A_file_accepts_what_it_lies_over_whatever_has_the_same_name_above_it()
    {
        var words = "event calving\ndefine calved\n  at least 1 calving ever\naccept \"calved\" as always met" + Because;
        const string Rule = "use \"words.byre\"\nrules for recipients\nrule \"Calved\"\n  needs calved\n  because \"b\"\n";
        Read(("farm.byre", Rule), ("words.byre", words)).Rulebook.Acceptances.Single().Name.ShouldBe("calved");

        words = "event calving\naccept \"Calved\" as always met" + Because;
        Read(("farm.byre", Rule.Replace("needs calved", "needs no calving ever", StringComparison.Ordinal)), ("words.byre", words)).Problems.Single().Code.ShouldBe("B0702");
    }

    [Theory]
    [InlineData("accept \"Calved\" as always met\n", "B0703")]
    [InlineData("accept \"Clved\" as always met" + Because, "B0714")]
    [InlineData("accept \"Calved\" as good enough" + Because, "B0402")]
    [InlineData("accept \"Calved\" as always met" + Because + "  until 2026-06-14\n", "B0403")]
    public void What_cannot_be_read_accepts_nothing_and_breaks_no_rule(string lines, string code)
    {
        var reading = Read(("base.byre", Base + lines));
        reading.Problems.Single().Code.ShouldBe(code);
        reading.Rulebook.Acceptances.ShouldBeEmpty();
        reading.Rulebook.Rules.ShouldNotContain(rule => rule.IsBroken);
    }

    [Fact]
    public void An_acceptance_changes_no_answer_and_so_not_the_canonical_text() =>
        CanonicalText.Of(Read(("base.byre", Base + "accept \"Calved\" as always met" + Because)).Rulebook)
            .ShouldBe(CanonicalText.Of(Read(("base.byre", Base)).Rulebook));

    private static RulebookReading Read(params (string Path, string Text)[] files) => Read(null, files);

    private static RulebookReading Read(LocalDate? knownOn, params (string Path, string Text)[] files)
    {
        var memory = new RuleFilesInMemory();
        foreach (var (path, text) in files)
        {
            memory.Add(path, text);
        }

        return RulebookReader.Read(files[0].Path, memory, knownOn).ShouldNotBeNull();
    }
}
