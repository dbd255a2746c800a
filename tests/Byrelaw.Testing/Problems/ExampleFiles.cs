using System.Text;
using Byrelaw.Testing.Documents;
using Byrelaw.Testing.Workbooks;

namespace Byrelaw.Testing.Problems;

/// <summary>
/// The files of one example on a page about problems. <c>byre rules</c> uses the base vocabulary; <c>byre file NAME</c>, and any
/// other <c>LANGUAGE file NAME</c>, is kept under its name; <c>byre latin-1</c>, <c>utf-16</c> and
/// <c>old-line-ends</c> are saved that way, <c>nul</c> has that character for <c>␀</c>, <c>no-end</c> has no last line end; <c>workbook</c>, <c>torn-workbook</c> and <c>huge-workbook</c> become sheets of a workbook
/// (<see cref="MadeWorkbook.OfText"/>), <c>old-workbook</c> one of the old form; <c>wide</c> gets five thousand columns more. <c>byre made</c> only hints at what
/// <see cref="MadeExamples"/> makes. The <c>byre</c> block that came last is the file that is read.
/// </summary>
public sealed class ExampleFiles
{
    /// <summary>The words that examples may use.</summary>
    public const string Vocabulary = "vocabulary.byre";

    private const string Example = "example.byre";
    private const string Named = "file ";

    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal) { [Vocabulary] = File.ReadAllBytes(Repository.At("rulesets/" + Vocabulary)) };

    /// <summary>The name of the file that is read.</summary>
    public string Root { get; private set; } = Example;

    /// <summary>Each file by its name, the base vocabulary among them.</summary>
    public IReadOnlyDictionary<string, byte[]> All => _files;

    /// <summary>Takes one more block; a file that is there already is replaced.</summary>
    /// <param name="fence">As it stands on the page.</param>
    /// <param name="code">The problem that the block's section is about.</param>
    public void Add(Fence fence, string code)
    {
        ArgumentNullException.ThrowIfNull(fence);
        var at = fence.Rest.IndexOf(Named, StringComparison.Ordinal);
        var name = at < 0 ? Example : fence.Rest[(at + Named.Length)..];
        if (fence.Language == "byre")
        {
            Root = name;
        }

        switch (at < 0 ? fence.Rest : fence.Rest[..at].TrimEnd())
        {
            case "rules":
                Add(name, fence.Text + $"use \"{Vocabulary}\"\n");
                break;
            case "latin-1":
                _files[name] = Encoding.Latin1.GetBytes(fence.Text);
                break;
            case "utf-16":
                _files[name] = [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(fence.Text)];
                break;
            case "old-line-ends":
                Add(name, fence.Text.Replace('\n', '\r'));
                break;
            case "nul":
                Add(name, fence.Text.Replace('␀', '\0'));
                break;
            case "no-end":
                Add(name, fence.Text.TrimEnd('\n'));
                break;
            case "workbook":
                _files[name] = MadeWorkbook.OfText(fence.Text);
                break;
            case "old-workbook":
                _files[name] = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];
                break;
            case "torn-workbook":
                _files[name] = MadeWorkbook.OfText(fence.Text)[..300];
                break;
            case "huge-workbook":
                _files[name] = MadeWorkbook.OfText(fence.Text.Replace("...", new string('x', (1 << 20) + 1), StringComparison.Ordinal));
                break;
            case "wide":
                Add(name, fence.Text.Replace("\n", new string(',', 5000) + "\n", StringComparison.Ordinal));
                break;
            case "made":
                MadeExamples.Of(code, name).ToList().ForEach(file => Add(file.Name, file.Text));
                break;
            default:
                Add(name, fence.Text);
                break;
        }
    }

    private void Add(string name, string text) => _files[name] = Encoding.UTF8.GetBytes(text);
}
