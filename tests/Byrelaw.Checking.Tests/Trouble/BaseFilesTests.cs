namespace Byrelaw.Checking.Tests.Trouble;

/// <summary>The shared rules and the example farms have no trouble that they do not accept, with reasons.</summary>
public sealed class BaseFilesTests
{
    public static TheoryData<string> Files() =>
    [
        .. Directory.EnumerateFiles(Repository.At("rulesets"), "*.byre", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Repository.At("examples"), "*.byre", SearchOption.AllDirectories))
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_base_file_has_no_trouble_that_it_does_not_accept(string file) =>
        Written.Find(Written.ReadFile(file)).Select(DiagnosticText.Of).ShouldBeEmpty();
}
