using Byrelaw.Language.Tests.Documents;
using Byrelaw.Language.Tidying;
using Byrelaw.Testing;

namespace Byrelaw.Language.Tests.Tidying;

/// <summary>The project's own rule files are printed the one way; <c>byrelaw tidy</c> mends one that is not.</summary>
public sealed class CorpusTests
{
    public static TheoryData<string> Paths() => [.. Corpus.Paths];

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_rule_file_of_the_project_is_tidy(string path)
    {
        var result = Tidier.Tidy(Repository.At(path), new DiskFiles())!;

        result.Source.Text.ShouldBe(Tidied.Text(result, path));
        result.IsTidy.ShouldBeTrue(path);
    }
}
