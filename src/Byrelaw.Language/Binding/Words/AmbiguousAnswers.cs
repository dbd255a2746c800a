using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Reading;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Binding.Words;

/// <summary>Finds names that read like an answer followed by its test: <c>no positive BVD virus ever</c>
/// would count one thing or the other.</summary>
internal static class AmbiguousAnswers
{
    /// <summary>Reports each at the later of the two declarations.</summary>
    /// <param name="names">All names.</param>
    /// <param name="files">Each after those it uses.</param>
    public static void Check(Namespace names, IReadOnlyList<RuleFile> files)
    {
        var order = new Dictionary<SourceFile, int>();
        foreach (var file in files)
        {
            order[file.Source] = order.Count;
        }

        foreach (var (spelling, symbol) in names.All.ToList())
        {
            if (symbol is KindSymbol { Kind: TestKind test })
            {
                foreach (var answer in test.Answers)
                {
                    if (names.Find($"{answer} {spelling}") is { Declared: { } other } found)
                    {
                        var isLater = (order[test.Declared.File], test.Declared.Start).CompareTo((order[other.File], other.Start)) > 0;
                        var at = isLater ? test.Declared : other;
                        files[order[at.File]].Problems.Add(NameProblems.AnswerReadsAsName(at, $"{answer} {spelling}", found, test.Name));
                    }
                }
            }
        }
    }
}
