namespace Byrelaw.Language.Tests.Sources;

/// <summary>
/// <c>composed.tsv</c> holds what <c>unicodedata.normalize("NFC", …)</c> of CPython (Unicode 14.0) makes of the letters with accents of the Latin, Greek
/// and Cyrillic scripts, taken apart, and of some hard cases: code points before, code points after.
/// </summary>
public sealed class ComposedTextTests
{
    [Fact]
    public void Letters_and_their_accents_join_as_another_implementation_joins_them()
    {
        var lines = File.ReadAllLines(Repository.At("tests/Byrelaw.Language.Tests/Sources/composed.tsv"));

        lines.Length.ShouldBeGreaterThan(600);
        lines.Where(line => ComposedText.Of(Text(line.Split('\t')[0])) != Text(line.Split('\t')[1])).ShouldBeEmpty();
    }

    [Fact]
    public void What_is_passed_over_as_whole_is_whole()
    {
        for (var c = '\u0080'; c < '\uD800'; c++)
        {
            var alone = c.ToString();
            if (ReferenceEquals(ComposedText.Of(alone), alone))
            {
                ADRaffy.ENSNormalize.ENSNormalize.NF.NFC("e" + alone + "e").ShouldBe("e" + alone + "e");
            }
        }
    }

    [Theory]
    [InlineData("cafe\u0301")]
    [InlineData("caf\u00e9")]
    [InlineData("Cafe\u0301")]
    public void A_name_is_one_name_however_its_accents_were_typed(string written)
    {
        var reading = Rules.Read($"event caf\u00e9\nrules for recipients\nrule \"A\"\n  needs no {written} in the last 30 days\n  because \"b\"");

        DiagnosticText.Of(reading.Problems).ShouldBe("");
    }

    [Fact]
    public void Half_a_sign_is_left_as_it_is() => ComposedText.Of("e\u0301\uD83D").ShouldBe("e\u0301\uD83D");

    private static string Text(string codes) =>
        string.Concat(codes.Split(' ').Select(code => char.ConvertFromUtf32(int.Parse(code, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));
}
