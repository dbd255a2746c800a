using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Byrelaw.Reporting.Tests.Pages;

/// <summary>CommonMark with pipe tables, as a general Markdown library reads it: the pages have the structure intended.</summary>
public sealed class StructureTests
{
    private static readonly List<ReportFile> Files = [.. Report.Of(InventedDraft.Make())];

    private static IEnumerable<MarkdownDocument> Pages =>
        Files.Where(file => file.Path.EndsWith(".md", StringComparison.Ordinal)).Select(file => CommonMark.Parse(file.Text));

    [Fact]
    public void Every_page_has_one_title_and_no_level_of_heading_is_skipped()
    {
        foreach (var page in Pages)
        {
            var levels = page.Descendants<HeadingBlock>().Select(heading => heading.Level).ToList();
            levels[0].ShouldBe(1);
            levels.Count(level => level == 1).ShouldBe(1);
            levels.Zip(levels.Skip(1)).ShouldAllBe(pair => pair.Second <= pair.First + 1);
        }
    }

    [Fact]
    public void Every_row_of_a_table_has_as_many_cells_as_its_heading()
    {
        var tables = Pages.SelectMany(page => page.Descendants<Table>()).ToList();
        tables.Count.ShouldBeGreaterThan(20);
        foreach (var table in tables)
        {
            var rows = table.OfType<TableRow>().ToList();
            rows[0].IsHeader.ShouldBeTrue();
            rows.ShouldAllBe(row => row.Count == rows[0].Count);
            rows.Count.ShouldBeGreaterThan(1);
        }
    }

    [Fact]
    public void A_list_has_a_row_for_every_animal_and_each_leads_to_her_page()
    {
        var page = CommonMark.Parse(Files.Single(file => file.Path == "recipients/index.md").Text);
        var links = page.Descendants<LinkInline>().Select(link => link.Url!).Where(url => url.StartsWith("../animals/", StringComparison.Ordinal)).Distinct().ToList();
        links.Count.ShouldBe(8);
        links.ShouldAllBe(link => Files.Any(file => "../" + file.Path == link));
    }

    [Fact]
    public void Every_link_of_every_page_leads_to_a_file_of_the_report()
    {
        var paths = Files.Select(file => file.Path).ToHashSet();
        foreach (var file in Files.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)))
        {
            foreach (var link in HtmlTree.Parse(file.Text).Descendants("a").Select(a => a.Attribute("href")!.Value).Where(link => link[0] != '#'))
            {
                var target = Path.GetFullPath(Path.Combine("/" + Path.GetDirectoryName(file.Path), link.Split('#')[0]))[1..];
                paths.ShouldContain(target, file.Path);
                if (link.Split('#') is [_, var place])
                {
                    HtmlTree.Parse(Files.Single(one => one.Path == target).Text).Descendants().ShouldContain(one => one.Attribute("id") != null && one.Attribute("id")!.Value == place, $"{file.Path} {link}");
                }
            }
        }
    }
}
