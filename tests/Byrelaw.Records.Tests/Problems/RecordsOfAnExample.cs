using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Problems;

/// <summary>A farm's folder as a page about problems shows it. What an example leaves out stands in the folder's <c>README.md</c>.</summary>
internal sealed class RecordsOfAnExample(ExampleFiles example) : IRuleFiles
{
    private static readonly ExampleFiles Usual = OnTheFirstPage();
    private static readonly Lazy<RulebookReading> Words = new(() => new RecordsOfAnExample(Usual).Rules(ExampleFiles.Vocabulary));

    /// <summary>All that <c>byrelaw records</c> finds: in the rules, in the records, and what is hard to believe in them.</summary>
    public IEnumerable<Diagnostic> Problems()
    {
        var rules = example.All.ContainsKey(example.Root) ? Rules(example.Root) : Words.Value;
        var (words, keeping) = (rules.Rulebook.Vocabulary, rules.Rulebook.Records);
        var check = keeping is { Sources.IsEmpty: false } && keeping.Sources.Any(source => source.Columns.Any(column => column.What.Name == "herd"))
            ? RecordsCheck.Check(OfTheFirstHerd(words, keeping), words, keeping, null)
            : keeping is { Sources.IsEmpty: false }
            ? RecordsCheck.Check(SourceReader.Read(file => example.All.GetValueOrDefault(file), file => file, words, keeping), words, keeping, null)
            : RecordsCheck.Check(new RecordInput(RecordFile.Of("animals.csv", File("animals.csv")), RecordFile.Of("events.csv", File("events.csv"))) { Embryos = IfThere("embryos.csv"), Pedigree = IfThere("pedigree.csv") }, words, keeping, null);
        return [.. rules.Problems, .. check.Herd.Problems, .. check.Doubts];
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => example.All.GetValueOrDefault(path);

    /// <summary>Herds are parted where the files lie on disk.</summary>
    private RecordInput OfTheFirstHerd(Vocabulary words, RecordKeeping keeping)
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            foreach (var (name, bytes) in example.All)
            {
                System.IO.File.WriteAllBytes(Path.Combine(folder.FullName, name), bytes);
            }

            var herds = HerdFolder.Open(folder.FullName, "", words, keeping);
            return herds.Input(herds.Herds[0]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private RulebookReading Rules(string root) => RulebookReader.Read(root, this)!;

    private RecordFile? IfThere(string name) => example.All.GetValueOrDefault(name) is { } bytes ? RecordFile.Of(name, bytes) : null;

    private byte[] File(string name) => example.All.GetValueOrDefault(name) ?? Usual.All[name];

    private static ExampleFiles OnTheFirstPage()
    {
        var usual = new ExampleFiles();
        foreach (var fence in MarkdownPage.Fences(System.IO.File.ReadAllText(Repository.At(ProblemPages.Folder + "README.md"))))
        {
            usual.Add(fence, "");
        }

        return usual;
    }
}
