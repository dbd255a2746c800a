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
    public static int FilesOf(Draft draft) => 5 + (draft.Herd.Problems.IsEmpty ? 0 : 1) + (draft.Herd.OpenRows.IsEmpty ? 0 : 1) + draft.Lists.Select(list => list.Choice.List).Distinct().Count() + draft.Lists.Sum(list => 2 + (2 * list.Animals.Length));

    /// <summary>The files: an overview, and for each list its first page, a page an animal and the list for the yards.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="inputs">What it was drawn up from; where that is given, the same facts stand in <c>draft.json</c>, to be verified later.</param>
    public static IEnumerable<ReportFile> Of(Draft draft, InputsJson? inputs = null)
    {
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

        var folders = new FileNames();
        var animals = new FileNames();
        var written = new HashSet<string>(StringComparer.Ordinal);
        foreach (var file in Both(OverviewPage.Of(draft, list => folders.For(FolderOf(list)), folders.For)))
        {
            yield return file;
        }

        foreach (var list in draft.Lists.Select(judged => new ListReport(draft, judged)))
        {
            var folder = folders.For(FolderOf(list));
            foreach (var file in Both(ListPage.Of(list, $"{folder}/index", number => $"animals/{animals.For(number)}.md")))
            {
                yield return file;
            }

            if (written.Add(list.Name))
            {
                yield return new ReportFile($"{folders.For(list.Name)}/draft.csv", DraftCsv.Of(draft, list.Name));
            }

            for (var i = 0; i < list.List.Animals.Length; i++)
            {
                var page = AnimalPage.Of(new AnimalReport(list, list.List.Animals[i]), $"{folder}/animals/{animals.For(list.List.Animals[i].Number)}",
                    Neighbour(list, i - 1, animals), Neighbour(list, i + 1, animals));
                foreach (var file in Both(page))
                {
                    yield return file;
                }
            }
        }
    }

    /// <summary>Each session of several has pages of its own; all its sessions stand in one table for the yards.</summary>
    private static string FolderOf(ListReport list) => list.Session is { } session ? $"{list.Name}-{session}" : list.Name;

    private static (string, string)? Neighbour(ListReport list, int at, FileNames animals) =>
        at >= 0 && at < list.List.Animals.Length && list.List.Animals[at].Number is var number ? (number, $"{animals.For(number)}.md") : null;

    /// <summary>A page as Markdown and as HTML, with its style sheet and script beside it in the report.</summary>
    public static ReportFile[] Both(Page page) =>
        [new($"{page.Path}.md", page.ToMarkdown()), new($"{page.Path}.html", HtmlDocument.Of(page))];

    /// <summary>The same of a page that goes alone.</summary>
    public static ReportFile[] Alone(Page page) =>
        [new($"{page.Path}.md", page.ToMarkdown()), new($"{page.Path}.html", HtmlDocument.Alone(page))];
}
