using System.Text.RegularExpressions;

namespace Byrelaw.Workshop.Tests.Wrong;

/// <summary>
/// Wrong rule files, one mistake each, named for the code of the problem that answers it. The
/// whole text that people read is held to the approved copy beside this test.
/// </summary>
public sealed partial class WrongFileTests
{
    private static readonly string Folder = Repository.At("tests/Byrelaw.Workshop.Tests/Wrong/Files");

    private static readonly NodaTime.LocalDate Today = new(2027, 6, 30);

    public static TheoryData<string> Names() =>
        new(Directory.EnumerateFileSystemEntries(Folder).Select(path => Path.GetFileNameWithoutExtension(path)).Where(name => name != "words").Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_wrong_file_is_answered(string name)
    {
        var isFolder = Directory.Exists(Path.Combine(Folder, name));
        var path = isFolder ? $"{name}/farm.byre" : $"{name}.byre";
        var reading = RulebookReader.Read(path, new RuleFilesInFolder(Folder), today: Today).ShouldNotBeNull().Corrected();
        reading.Problems.Select(problem => problem.Code).ShouldContain(name[..5]);
        Snapshot.Verify(DiagnosticText.Of(reading.Problems), name);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_correction_that_is_offered_mends(string name)
    {
        var isFolder = Directory.Exists(Path.Combine(Folder, name));
        var path = isFolder ? $"{name}/farm.byre" : $"{name}.byre";
        var files = new RuleFilesInFolder(Folder);
        var reading = RulebookReader.Read(path, files)!.Corrected();
        foreach (var problem in reading.Problems.Where(problem => problem.Correction is not null))
        {
            var text = problem.Correction!.In(Encoding.UTF8.GetString(files.Read(problem.File)!));
            var after = RulebookReader.Read(path, new RuleFilesInFolder(Folder, problem.File, text))!.Problems;

            after.Count(other => other.Severity == Severity.Error).ShouldBeLessThan(reading.Problems.Count(other => other.Severity == Severity.Error));
            after.Where(other => other.File == problem.File && other.Line == problem.Line).Select(other => (other.Code, other.Found)).ShouldNotContain((problem.Code, problem.Found));
        }
    }

    [Fact]
    public void Each_code_has_a_wrong_file()
    {
        var sources = Directory.EnumerateFiles(Repository.At("src/Byrelaw.Language/Diagnostics"), "*.cs", SearchOption.AllDirectories);
        var codes = sources.SelectMany(file => Code().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value)).ToList();
        codes.Count.ShouldBeGreaterThan(90);
        codes.ShouldBeUnique();

        // What is too long or too many is made in LimitTests, or for its page (MadeExamples).
        var names = Names().Select(row => row.Data).ToList();
        codes.Except(["B0006", "B0008", "B0107", "B0875"]).Where(code => !names.Exists(name => name.StartsWith(code, StringComparison.Ordinal))).ShouldBeEmpty();
    }

    [GeneratedRegex("\"(B[0-9]{4})\"")]
    private static partial Regex Code();
}
