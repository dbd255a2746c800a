namespace Byrelaw.Workshop.Tests.Tidying;

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

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_rule_file_of_the_project_comes_back_from_other_indents_and_spaces(string path)
    {
        var careless = Mangled.Spaces(Corpus.Good[path], new Random(path.Length));

        Tidied.Text(Tidier.Tidy(path, Corpus.Files(path, careless))!, careless).ShouldBe(Corpus.Good[path]);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_rule_file_of_the_project_written_wildly_keeps_its_comments_and_is_tidied_once(string path)
    {
        var wild = Mangled.Wildly(Corpus.Good[path], new Random(path.Length));

        var tidied = Tidied.Text(Tidier.Tidy(path, Corpus.Files(path, wild))!, wild);

        Tidied.Comments(tidied).ShouldBe(Tidied.Comments(wild));
        Tidied.Text(Tidier.Tidy(path, Corpus.Files(path, tidied))!, tidied).ShouldBe(tidied);
    }
}
