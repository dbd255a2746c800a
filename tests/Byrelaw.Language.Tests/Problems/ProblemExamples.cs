using System.Text;
using Byrelaw.Language.Correcting;
using Byrelaw.Language.Reading;
using Byrelaw.Language.Tests.Support;
using Byrelaw.Testing;
using Byrelaw.Testing.Documents;

namespace Byrelaw.Language.Tests.Problems;

/// <summary>
/// Reads the examples of the pages about problems. <c>byre rules</c> uses the base vocabulary, <c>byre file NAME</c> is kept for the
/// example's other files, the last of which is read; <c>byre latin-1</c> and <c>byre old-line-ends</c> are saved that way, and
/// <c>byre made</c> only hints at what <see cref="MadeExamples"/> makes.
/// </summary>
internal sealed class ProblemExamples
{
    private const string Example = "example.byre";

    private readonly RuleFilesInMemory _files = new RuleFilesInMemory().Add("vocabulary.byre", File.ReadAllText(Repository.At("rulesets/vocabulary.byre")));
    private string _root = Example;

    /// <summary>Takes one more file of an example, which from now on is the one that is read.</summary>
    public void Add(Fence fence, string code)
    {
        _root = fence.Rest.StartsWith("file ", StringComparison.Ordinal) ? fence.Rest["file ".Length..] : Example;
        switch (fence.Rest)
        {
            case "rules":
                _files.Add(_root, fence.Text + "use \"vocabulary.byre\"\n");
                break;
            case "latin-1":
                _files.Add(_root, Encoding.Latin1.GetBytes(fence.Text));
                break;
            case "old-line-ends":
                _files.Add(_root, fence.Text.Replace('\n', '\r'));
                break;
            case "made":
                MadeExamples.Add(_files, _root, code);
                break;
            default:
                _files.Add(_root, fence.Text);
                break;
        }
    }

    /// <summary>What is wrong with the example, corrections tried.</summary>
    public RulebookReading Read() => RulebookReader.Read(_root, _files)!.Corrected();
}
