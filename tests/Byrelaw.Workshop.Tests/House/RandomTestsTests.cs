using System.Text.RegularExpressions;

namespace Byrelaw.Workshop.Tests.House;

public sealed partial class RandomTestsTests
{
    /// <summary>A sample of the library's own cannot be drawn again by a number; a distribution's (<c>Gamma.Sample</c>) is no test.</summary>
    [Fact]
    public void Every_random_test_draws_from_the_one_place_whose_cases_come_again() =>
        Directory.EnumerateFiles(Repository.At("tests"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(path => OwnSample().IsMatch(File.ReadAllText(path))).ShouldBeEmpty();

    [GeneratedRegex(@"(?<!Gamma|Poisson|Beta)\.Sample\(")]
    private static partial Regex OwnSample();
}
