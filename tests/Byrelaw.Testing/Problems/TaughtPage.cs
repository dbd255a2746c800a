using Byrelaw.Testing.Documents;

namespace Byrelaw.Testing.Problems;

/// <summary>A page in <c>docs/problems</c>: in each section a wrong example, a block <c>problems</c> with what the program says of it, and the example mended.</summary>
/// <param name="page">The file's name.</param>
/// <param name="says">What the program says of an example.</param>
public sealed class TaughtPage(string page, Func<ExampleFiles, Said> says)
{
    private readonly string _path = ProblemPages.Folder + page;

    /// <summary>Holds the page's <c>problems</c> blocks to what the program says. <c>SNAPSHOT_UPDATE=1</c> fills them in, except on a build server.</summary>
    public void SaysWhatTheProgramSays()
    {
        var sections = new ProblemSections(_path);
        var (files, of) = (new ExampleFiles(), "");
        ExecutedPage.Verify(_path, fence =>
        {
            var code = sections.CodeAt(fence.Line);
            (files, of) = (code == of ? files : new ExampleFiles(), code);
            if (fence.Language == "problems")
            {
                return says(files).Text.TrimEnd('\n') + "\n";
            }

            files.Add(fence, code);
            return null;
        });
    }

    /// <summary>The page's sections, their examples tried. What the wrong and the mended example share need not stand there twice.</summary>
    /// <exception cref="FormatException">A section has no wrong example, no <c>problems</c> block or no mended example.</exception>
    public IEnumerable<Lesson> Lessons()
    {
        foreach (var (code, fences) in new ProblemSections(_path).All)
        {
            var said = fences.FindIndex(fence => fence.Language == "problems");
            if (said < 1 || said == fences.Count - 1)
            {
                throw new FormatException($"{_path}: {code} wants a wrong example, a block `problems` and a mended example, in this order.");
            }

            var files = new ExampleFiles();
            fences.Take(said).ToList().ForEach(fence => files.Add(fence, code));
            var wrong = says(files);
            fences.Skip(said + 1).ToList().ForEach(fence => files.Add(fence, code));
            yield return new Lesson(code, wrong, says(files));
        }
    }
}
