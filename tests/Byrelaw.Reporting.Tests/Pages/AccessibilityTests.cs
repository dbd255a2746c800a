using System.Xml.Linq;

namespace Byrelaw.Reporting.Tests.Pages;

/// <summary>
/// What WCAG 2.2 asks of such pages and a machine can see: language, title, headings, table headings
/// with scope, captions, a way past the top, names for pictures. Source: W3C, WCAG 2.2, criteria 1.1.1, 1.3.1, 2.4.1, 2.4.2, 3.1.1.
/// </summary>
public sealed class AccessibilityTests
{
    private static readonly List<(string Path, XElement Html)> Pages =
        [.. Report.Of(InventedDraft.Make()).Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)).Select(file => (file.Path, HtmlTree.Parse(file.Text)))];

    [Fact]
    public void Every_page_names_its_language_and_its_title_and_has_a_way_past_the_top()
    {
        foreach (var (path, html) in Pages)
        {
            html.Attribute("lang")!.Value.ShouldBe("en", path);
            html.Descendants("title").First().Value.ShouldNotBeEmpty(path);
            var skip = html.Descendants("a").First();
            skip.Attribute("href")!.Value.ShouldBe("#main", path);
            html.Descendants("main").Single().Attribute("id")!.Value.ShouldBe("main", path);
        }
    }

    [Fact]
    public void Every_table_has_a_caption_and_headings_with_scope()
    {
        foreach (var table in Pages.SelectMany(page => page.Html.Descendants("table")))
        {
            table.Elements("caption").Single().Value.ShouldNotBeEmpty();
            table.Descendants("th").ShouldAllBe(heading => heading.Attribute("scope") != null);
            table.Element("tbody")!.Elements("tr").ShouldAllBe(row => row.Elements("th").Count() == 1);
        }
    }

    [Fact]
    public void What_is_drawn_is_hidden_from_those_who_hear_the_page_and_stands_beside_it_in_words()
    {
        foreach (var (path, html) in Pages)
        {
            html.Descendants("svg").ShouldAllBe(svg => svg.Attribute("aria-hidden") != null, path);
            html.Descendants("div").Where(div => div.Attribute("class")?.Value == "lane").ShouldAllBe(lane => lane.Element("span")!.Value.Length > 4, path);
        }

        Pages.Count(page => page.Html.Descendants("div").Any(div => div.Attribute("class")?.Value == "lanes")).ShouldBe(8);
    }

    [Fact]
    public void Nothing_is_fetched_but_the_reports_own_style_sheet_and_script()
    {
        foreach (var (path, html) in Pages)
        {
            var up = string.Concat(Enumerable.Repeat("../", path.Count(c => c == '/')));
            html.Descendants("link").Single().Attribute("href")!.Value.ShouldBe(up + PageFiles.StyleFile);
            html.Descendants("script").Single().Attribute("src")!.Value.ShouldBe(up + PageFiles.ScriptFile);
            html.Descendants("script").Single().Value.ShouldBeEmpty(path);
            html.DescendantsAndSelf().Where(one => one.Name != "script").Attributes().ShouldAllBe(attribute => attribute.Name != "src" && !attribute.Name.LocalName.StartsWith("on"));
        }

        PageFiles.Style.ShouldNotContain("url(");
        PageFiles.Style.ShouldNotContain("@import");
        PageFiles.Script.ShouldNotContain("http");
        PageFiles.Script.ShouldNotContain("innerHTML");
    }

    [Fact]
    public void Every_page_says_judged_for_records_to_and_void_after_on_a_screen_and_at_the_foot_of_every_sheet_of_paper()
    {
        foreach (var (path, html) in Pages.Where(page => page.Path is not ("index.html" or "rules.html")))
        {
            foreach (var words in new[] { html.Descendants("header").Single().Value, html.Descendants("style").Single().Value })
            {
                words.ToLowerInvariant().Replace(" ", "", StringComparison.Ordinal).ShouldContain("judgedfor20and21october2026", Case.Sensitive, path);
                words.ToLowerInvariant().Replace(" ", "", StringComparison.Ordinal).ShouldContain("recordsto20september2026", Case.Sensitive, path);
                words.ToLowerInvariant().Replace(" ", "", StringComparison.Ordinal).ShouldContain("voidafter21october2026", Case.Sensitive, path);
            }

            html.Attribute("data-void")!.Value.ShouldBe("2026-10-21", path);
        }
    }
}
