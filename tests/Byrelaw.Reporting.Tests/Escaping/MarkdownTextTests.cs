using Byrelaw.Reporting.Markdown;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Byrelaw.Reporting.Tests.Escaping;

public sealed class MarkdownTextTests
{
    [Fact]
    public void Escaped_words_read_back_as_themselves() => Gen.String.Hold(words =>
    {
        var clean = PlainText.Clean(words).Trim();
        var document = CommonMark.Parse("x " + MarkdownText.Of(words) + " x");
        document.Count.ShouldBe(1);
        var text = string.Concat(document.Descendants<LiteralInline>().Select(literal => literal.Content.ToString()));
        document.Descendants<Inline>().ShouldAllBe(inline => inline is LiteralInline || inline is ContainerInline && !(inline is EmphasisInline || inline is LinkInline));
        text.ShouldBe(clean.Length == 0 ? "x  x" : $"x {PlainText.Clean(words)} x");
    });

    [Fact]
    public void Words_at_the_start_of_a_line_open_no_block() => Gen.OneOf(Gen.String, Gen.OneOf("# a", "- a", "+ a", "12. a", "3) a", "> a", "---", "===", "    a", "```", "1.", "-")).Hold(words =>
    {
        var document = CommonMark.Parse(MarkdownText.Of(words));
        document.ShouldAllBe(block => block is ParagraphBlock);
    });

    [Fact]
    public void Ordinary_words_are_left_as_they_are() =>
        MarkdownText.Of("Eight weeks calved: 43 of 56 days (events.csv 318), -1.5 to 4.8").ShouldBe("Eight weeks calved: 43 of 56 days (events.csv 318), -1.5 to 4.8");
}
