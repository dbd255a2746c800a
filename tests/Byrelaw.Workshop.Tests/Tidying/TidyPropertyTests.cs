namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>What holds for every file: random ones carelessly written, and the project's own with slips in them.</summary>
public sealed class TidyPropertyTests
{
    private static readonly Gen<(string Text, int Seed)> Case = Gen.Select(RandomRules.File, Gen.Int[0, int.MaxValue - 1]);

    [Fact]
    public void Tidying_again_changes_nothing_and_rules_and_comments_stay_the_same() => Case.Hold(
        one =>
        {
            var written = Mangled.Wildly(one.Text, new Random(one.Seed));
            var tidied = Tidied.Text(written);

            Tidied.Text(tidied).ShouldBe(tidied);
            Tidied.Result(tidied).IsTidy.ShouldBeTrue();
            CanonicalText.Of(Rules.Read(tidied).Rulebook).ShouldBe(CanonicalText.Of(Rules.Read(written).Rulebook));
            Tidied.Comments(tidied).ShouldBe(Tidied.Comments(written));
            tidied.Split('\n').ShouldAllBe(line => line.Length == line.TrimEnd().Length);
        },
        count: 400);

    [Fact]
    public void Space_between_words_makes_no_difference() => Case.Hold(
        one => Tidied.Text(Mangled.Spaces(one.Text, new Random(one.Seed))).ShouldBe(Tidied.Text(one.Text)),
        count: 150);

    [Fact]
    public void A_file_with_slips_is_tidied_truly_or_left_alone()
    {
        var (tidied, left) = (0, 0);
        Parallel.For(0, 400, seed =>
        {
            var random = new Random(seed);
            var path = Corpus.Paths[random.Next(Corpus.Paths.Length)];
            var text = Mutant.Of(Corpus.Good[path], random);
            var result = Tidier.Tidy(path, Corpus.Files(path, text))!;

            result.WouldChange.ShouldBeNull($"slip {seed} in {path}");
            if (result.Text is null)
            {
                result.Errors.ShouldNotBeEmpty();
                Interlocked.Increment(ref left);
            }
            else
            {
                Tidier.Tidy(path, Corpus.Files(path, result.Text))!.Text.ShouldBe(result.Text, $"slip {seed} in {path}");
                Interlocked.Increment(ref tidied);
            }
        });

        Math.Min(tidied, left).ShouldBeGreaterThan(30);
    }
}
