namespace Byrelaw.Checking.Tests.Support;

/// <summary>Tries the examples of a test.</summary>
internal static class Tried
{
    /// <summary>Words and rules that most tests need.</summary>
    public const string Rules =
        """
        event calving also calvings, not before 15 months of age
        event heat
        event mating
        event lameness
        measure liver copper in umol/kg
        measure body condition on scale 1 to 10
        test BVD virus answers positive, negative
        fact breeding index is number
        fact breed is one of Friesian, Jersey

        define cycling
          at least 1 heat or mating since last calving

        rules for recipients

        rule "Eight weeks calved"
          applies to cows
          needs at least 56 days since last calving
          because "The uterus needs about eight weeks to clean up and shrink after calving."
          source "common practice, no source"

        rule "Cycling"
          needs cycling
          because "An embryo needs a corpus luteum of the right age."
          source "common practice, no source"

        rule "Sound on her feet"
          needs no lameness in the last 30 days
          because "A lame cow keeps fewer embryos."
          source "common practice, no source"

        rules for donors

        rule "Free of BVD virus"
          needs latest BVD virus ever is negative
          because "An animal born with the virus sheds it all her life."
          source "common practice, no source"

        rule "Two cool months"
          needs no heat in the 60 days before collection
          because "Only so that a rule of this test names a date."
          source "common practice, no source"

        prefer "Settled in milk"
          between 60 and 120 days since last calving
          because "Past the hard weeks, and not yet late."
          source "common practice, no source"


        """;

    /// <summary>Examples below <see cref="Rules"/>, without an error in reading.</summary>
    public static ImmutableArray<ExampleOutcome> Examples(string examples, string rules = Rules)
    {
        var files = new RuleFiles(("rules.byre", rules), ("examples.byre", "use \"rules.byre\"\n" + examples));
        var reading = RulebookReader.Read("examples.byre", files)!;
        DiagnosticText.Of(reading.Problems).ShouldBe("");
        return ExampleRunner.Run(reading, files);
    }

    /// <summary>What came out otherwise than expected; empty for nothing.</summary>
    public static string Failures(IEnumerable<ExampleOutcome> outcomes) => DiagnosticText.Of(Problems(outcomes));

    /// <summary>What is wrong with the records of examples, and what came out otherwise than expected.</summary>
    public static IEnumerable<Diagnostic> Problems(IEnumerable<ExampleOutcome> outcomes) =>
        outcomes.SelectMany(outcome => outcome.Problems.Concat(outcome.Expectations.Select(expectation => expectation.Failure).OfType<Diagnostic>()));
}
