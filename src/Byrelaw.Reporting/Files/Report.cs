using Byrelaw.Reporting.Verifying;

namespace Byrelaw.Reporting.Files;

/// <summary>One file of a report.</summary>
/// <param name="Path">Within the report, forward slashes.</param>
/// <param name="Text">All of it.</param>
public sealed record ReportFile(string Path, string Text);

/// <summary>All files of a draft's report, made one by one.</summary>
public static class Report
{
    /// <summary>How many files there will be.</summary>
    public static int FilesOf(Draft draft, InputsJson? inputs)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return (inputs is null ? 6 : 7) + (draft.Herd.Problems.IsEmpty ? 0 : 1) + (draft.Herd.OpenRows.IsEmpty ? 0 : 1)
            + draft.Lists.Select(list => list.Choice.List).Distinct().Count() + (2 * draft.Lists.Length) + (2 * new PagesAsked(inputs?.Pages).Of(draft).Count());
    }

    /// <summary>The files: the season's page, a page for each list and for each animal that is to have one, and the lists for a spreadsheet.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="inputs">What it was drawn up from; where that is given, the same facts stand in <c>draft.json</c>, to be verified later.</param>
    public static IEnumerable<ReportFile> Of(Draft draft, InputsJson? inputs = null)
    {
        ArgumentNullException.ThrowIfNull(draft);
        if (inputs is not null)
        {
            yield return new ReportFile(KeptReport.DraftFile, JsonText.Of(draft, inputs) + "\n");
        }

        if (!draft.Herd.Problems.IsEmpty)
        {
            yield return new ReportFile(ProblemsCsv.File, ProblemsCsv.Of(draft.Herd));
        }

        if (!draft.Herd.OpenRows.IsEmpty)
        {
            yield return new ReportFile(OpenSheetsCsv.File, OpenSheetsCsv.Of(draft.Herd));
        }

        foreach (var file in PageFiles.Files)
        {
            yield return file;
        }

        var (folders, animals) = (new FileNames(), new FileNames());
        var named = DraftNames.Of(draft);
        var withPage = new PagesAsked(inputs?.Pages).Of(draft).ToList();
        var numbers = withPage.Select(her => her.Main.Animal.Number).ToHashSet(StringComparer.Ordinal);
        var written = new HashSet<string>(StringComparer.Ordinal);
        var lists = draft.Lists.Select(judged => new ListReport(draft, judged)).ToList();
        var recipients = draft.Rulebook.Programme is { } programme ? ProgrammeLists.Recipients(programme)?.List : null;
        var main = lists.Exists(list => list.Name == recipients) ? lists.FindAll(list => list.Name == recipients) : lists;
        foreach (var file in Both(Led(OverviewPage.Of(draft, named, list => folders.For(FolderOf(list)), folders.For))))
        {
            yield return file;
        }

        foreach (var file in Both(Led(RulesPage.Of(draft))))
        {
            yield return file;
        }

        foreach (var list in lists)
        {
            foreach (var file in Both(Led(ListPage.Of(list, $"{folders.For(FolderOf(list))}/index", number => numbers.Contains(number) ? $"../animals/{animals.For(number)}.md" : null, named))))
            {
                yield return file;
            }

            if (written.Add(list.Name))
            {
                yield return new ReportFile($"{folders.For(list.Name)}/draft.csv", DraftCsv.Of(draft, list.Name));
            }
        }

        for (var i = 0; i < withPage.Count; i++)
        {
            var page = AnimalPage.Of(
                withPage[i], $"animals/{animals.For(withPage[i].Main.Animal.Number)}", report => $"../{folders.For(FolderOf(report.On))}/index.md#{Anchors.Of(report.Animal.Number)}", Neighbour(i - 1), Neighbour(i + 1));
            foreach (var file in Both(Led(page)))
            {
                yield return file;
            }
        }

        (string, string)? Neighbour(int at) => at >= 0 && at < withPage.Count && withPage[at].Main.Animal.Number is var number ? (number, $"{animals.For(number)}.md") : null;

        // Every page leads to the season's page, and to the recipients of every session; the others stand on the season's page.
        Page Led(Page page)
        {
            var up = page.Path.Contains('/', StringComparison.Ordinal) ? "../" : "";
            return page with
            {
                Head = page.Head with
                {
                    Ways = [new("Season", $"{up}index.md", page.Path == "index"), .. main.Select(list => (List: list, Path: $"{folders.For(FolderOf(list))}/index")).Select(one => new Way(one.List.Session is { } session ? $"Session {session}" : Phrases.Sentence(one.List.Name), $"{up}{one.Path}.md", page.Path == one.Path)), new("Rules", $"{up}{RulesPage.Path}.md", page.Path == RulesPage.Path)],
                },
            };
        }
    }

    /// <summary>Each session of several has pages of its own; all its sessions stand in one table for the yards.</summary>
    private static string FolderOf(ListReport list) => list.Session is { } session ? $"{list.Name}-{session}" : list.Name;

    /// <summary>A page as Markdown and as HTML, with its style sheet and script beside it in the report.</summary>
    public static ReportFile[] Both(Page page) =>
        [new($"{page.Path}.md", page.ToMarkdown()), new($"{page.Path}.html", HtmlDocument.Of(page))];

    /// <summary>The same of a page that goes alone.</summary>
    public static ReportFile[] Alone(Page page) =>
        [new($"{page.Path}.md", page.ToMarkdown()), new($"{page.Path}.html", HtmlDocument.Alone(page))];
}
