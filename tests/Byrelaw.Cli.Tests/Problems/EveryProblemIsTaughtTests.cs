using System.Reflection;
using Byrelaw.Language.Diagnostics;

namespace Byrelaw.Cli.Tests.Problems;

/// <summary>Whatever part of the program finds a problem, <c>byrelaw check --explain</c> teaches it.</summary>
public sealed class EveryProblemIsTaughtTests
{
    private static readonly List<string> Taught = [.. ProblemCatalogue.All.Select(page => page.Code)];

    [Fact]
    public void Each_code_has_one_page()
    {
        Taught.ShouldBeUnique();
        Codes().Except(Taught).Order().ShouldBeEmpty();
    }

    [Fact]
    public void Each_page_is_about_a_code_that_the_program_can_say() => Taught.Except(Codes()).ShouldBeEmpty();

    /// <summary>Every code in every part of the program.</summary>
    private static HashSet<string> Codes()
    {
        var parts = Directory.EnumerateFiles(AppContext.BaseDirectory, "*.dll").Select(path => Path.GetFileNameWithoutExtension(path))
            .Where(name => name.StartsWith("byrelaw", StringComparison.OrdinalIgnoreCase) && !name.Contains(".Test", StringComparison.Ordinal)).ToList();
        parts.ShouldContain("byrelaw");
        parts.ShouldContain("Byrelaw.Records");
        var codes = parts.SelectMany(part => ProblemCodes.In(Assembly.Load(part)).Keys).ToHashSet(StringComparer.Ordinal);
        codes.Count.ShouldBeGreaterThan(200);
        return codes;
    }
}
