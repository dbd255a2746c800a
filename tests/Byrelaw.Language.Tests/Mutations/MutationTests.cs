namespace Byrelaw.Language.Tests.Mutations;

/// <summary>
/// Thousands of slips in good files: none crashes or hangs, and what is read without any problem reads
/// back from its canonical text to the same rulebook.
/// </summary>
public sealed class MutationTests
{
    private const int Slips = 2_000;
    private const int MostSlipsInOneFile = 3;

    private static readonly string[] Paths =
    [
        "rulesets/vocabulary.byre", "rulesets/shared-conditions.byre", "rulesets/recipients.byre", "rulesets/treatment.byre",
        "rulesets/donors.byre", "rulesets/words-new-zealand.byre", "examples/withy-bend/spring-2026.byre",
    ];

    private static readonly Dictionary<string, string> Good =
        Paths.ToDictionary(path => path, path => File.ReadAllText(Repository.At(path)));

    [Fact(Timeout = 600_000)]
    public async Task A_slip_never_crashes_and_never_goes_by_unseen_and_unstable()
    {
        var unseen = 0;
        var options = new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken };
        await Task.Run(() => Parallel.For(0, Slips, options, seed =>
        {
            var random = new Random(seed);
            var path = Paths[random.Next(Paths.Length)];
            var text = Good[path];
            for (var slip = random.Next(MostSlipsInOneFile); slip >= 0; slip--)
            {
                text = Mutant.Of(text, random);
            }

            // Each file is read on its own with what it uses, so that most of the work is in the file with the slip.
            var files = new RuleFilesInMemory();
            foreach (var (good, own) in Good)
            {
                files.Add(good, good == path ? text : own);
            }

            RulebookReading reading;
            try
            {
                reading = RulebookReader.Read(path, files)!;
                _ = DiagnosticText.Of(reading.Problems);
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Slip {seed} in {path} crashes the reader with {exception.GetType().Name}: {exception.Message}", exception);
            }

            if (reading.Problems.IsEmpty)
            {
                Interlocked.Increment(ref unseen);
                ReadsBack(reading, seed);
            }
        }), options.CancellationToken);

        // Slips in comments and reasons are no mistakes: were there none, this would check nothing.
        unseen.ShouldBeGreaterThan(Slips / 100);
    }

    private static void ReadsBack(RulebookReading reading, int seed)
    {
        var canonical = CanonicalText.Of(reading.Rulebook);
        var again = RulebookReader.Read("canonical.byre", new RuleFilesInMemory().Add("canonical.byre", canonical))!;
        DiagnosticText.Of(again.Problems.Where(problem => problem.Severity == Severity.Error)).ShouldBe("", $"slip {seed}");
        CanonicalText.Of(again.Rulebook).ShouldBe(canonical, $"slip {seed}");
    }
}
