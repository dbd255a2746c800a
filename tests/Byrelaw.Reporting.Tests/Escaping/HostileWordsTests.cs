using Markdig.Syntax;

namespace Byrelaw.Reporting.Tests.Escaping;

/// <summary>Whatever stands in files, a page keeps its structure: words stay words.</summary>
public sealed class HostileWordsTests
{
    private static readonly string[] Known =
    [
        "<script>alert(1)</script>", "| a | b |", "`code` `", "**bold** _it_", "[a](javascript:x)", "![x](y)", "<!-- ", "]]>", "&amp; &#60;b&#62;", "# head",
        "- item", "1. one", "> quote", "---", "===", "\\", "\\|", "\r\n\r\n# x", "\t", "\u0000", "\u001b[31m", "\u202Eabc", "\uD800", "\uFFFF", "<a@b.c>", "<https://x.y>", "~~~", "```", "$a$", "^", "{.x}", "☐", "*", "_", "\"", "'", "＝1+1", "a\u2028b", "|", "||", ":-", ": - |", "+", "=", "html</style></title>",
    ];

    private static readonly Gen<string> Hostile = Gen.Select(Gen.OneOf(Gen.OneOf(Known), Gen.String), Gen.OneOf(Gen.OneOf(Known), Gen.String), (a, b) => a + b);

    private static readonly Dictionary<string, string> Tame = Outlines(text => text);

    [Fact]
    public void Known_tricks_change_nothing() => Array.ForEach(Known, trick =>
    {
        ShouldKeepStructure(text => trick + text);
        ShouldKeepStructure(text => trick + text + trick);
    });

    [Fact]
    public void Random_words_around_every_word_change_nothing() => Gen.Select(Hostile, Hostile).Hold((before, after) =>
    {
        ShouldKeepStructure(text => before + text + after);
        return true;
    }, count: 20);

    private static void ShouldKeepStructure(Func<string, string> alter)
    {
        var hostile = Outlines(alter);
        // Folder and file names follow the names; what must agree is every page, in order.
        hostile.Values.ShouldBe(Tame.Values);
    }

    private static Dictionary<string, string> Outlines(Func<string, string> alter)
    {
        var outlines = new Dictionary<string, string>();
        foreach (var file in Report.Of(InventedDraft.Make(alter)))
        {
            if (file.Path.EndsWith(".html", StringComparison.Ordinal))
            {
                outlines[file.Path] = HtmlTree.Outline(HtmlTree.Parse(file.Text));
            }
            else if (file.Path.EndsWith(".md", StringComparison.Ordinal))
            {
                // The whole page at once, as another reader of Markdown takes it.
                var page = CommonMark.Parse(file.Text);
                outlines[file.Path] = string.Join('\n', page.Descendants<Block>().Select(block => $"{block.GetType().Name} {(block as HeadingBlock)?.Level}"));
            }
        }

        return outlines;
    }
}
