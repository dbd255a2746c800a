namespace Byrelaw.Language.Tests.Canonical;

public sealed class CanonicalTextTests
{
    [Fact]
    public void A_rulebook_prints_sorted_and_reads_back_the_same()
    {
        var text = CanonicalText.Of(Read(Rules.Words + Snippets.Everything));
        Snapshot.Verify(text, extension: "byre");
        CanonicalText.Of(Read(text)).ShouldBe(text);
    }

    [Fact]
    public void The_order_of_writing_comments_and_paths_do_not_show()
    {
        const string a = "event heat\nevent mating also service, served\nrules for x\nrule \"A\"\n  needs no heat ever\n  because \"b\"\n";
        const string b = "# a comment\nevent mating  also served,service\n\nrules for x\n  rule \"A\"\n  because \"b\" # why\n  needs no HEAT ever\nevent heat";
        Fingerprint.Of(Read(a)).ShouldBe(Fingerprint.Of(Read(b)));
        var layered = new RuleFilesInMemory().Add("farm.byre", "use \"some/words.byre\"\nrules for x\nrule \"A\"\n  needs no heat ever\n  because \"b\"\n")
            .Add("some/words.byre", "event heat\nevent mating also service, served\n");
        Fingerprint.Of(Rules.Read(layered).Rulebook).ShouldBe(Fingerprint.Of(Read(a)));
    }

    [Fact]
    public void A_number_that_differs_shows()
    {
        const string a = "event heat\ndefine it\n  no heat in the last 30 days\n";
        Fingerprint.Of(Read(a)).ShouldNotBe(Fingerprint.Of(Read(a.Replace("30", "31", StringComparison.Ordinal))));
    }

    [Fact]
    public void The_fingerprint_is_the_SHA_256_of_the_text()
    {
        // FIPS 180-4's digest of no bytes at all: the empty rulebook prints nothing.
        Fingerprint.Of(Read("")).ShouldBe("sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    [Theory]
    [InlineData("event \"bull in\"")]
    [InlineData("event \"2 days milk\"")]
    [InlineData("event \"Ärger \\\"groß\\\" \\\\\"")]
    [InlineData("event \"days open\"")]
    [InlineData("event \"joins the mob\"")]
    [InlineData("event \"9\", also \"-\", \"a,b\"")]
    public void A_name_that_words_alone_do_not_make_stands_in_quotes(string declared)
    {
        CanonicalText.Of(Read(declared + "\n")).ShouldBe(declared + "\n");
        var name = declared["event ".Length..].Split("\", also")[0];
        name = name.EndsWith('"') ? name : name + "\"";
        var used = $"{declared}\ndefine it\n  at least 2 {name} in the last 30 days\n";
        CanonicalText.Of(Read(CanonicalText.Of(Read(used)))).ShouldBe(CanonicalText.Of(Read(used)));
    }

    private static Byrelaw.Language.Rulebooks.Rulebook Read(string text)
    {
        var reading = Rules.Read(text);
        Language.Diagnostics.DiagnosticText.Of(reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error)).ShouldBe("");
        return reading.Rulebook;
    }
}
