using System.Text.RegularExpressions;

namespace Byrelaw.Reporting.Tests.Html;

/// <summary>The style sheet lies in every report, so it holds nothing that no page has.</summary>
public sealed partial class StyleSheetTests
{
    /// <summary>Made of two parts: an answer's pattern on bars.</summary>
    private static readonly HashSet<string> Joined = ["p-ready", "p-course", "p-later", "p-ask", "p-no"];

    [Fact]
    public void Every_class_of_it_is_written_by_some_page()
    {
        var folder = Repository.At("src/Byrelaw.Reporting");
        var written = Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories).Where(file => !file.Contains("/obj/", StringComparison.Ordinal))
            .Append(Path.Combine(folder, "Html/page.js"))
            .SelectMany(file => Quoted().Matches(File.ReadAllText(file)).SelectMany(text => Name().Matches(text.Value)).Select(name => name.Value)).ToHashSet(StringComparer.Ordinal);
        var sheet = Comment().Replace(File.ReadAllText(Path.Combine(folder, "Html/page.css")), "");
        var classes = Selector().Matches(sheet).SelectMany(selector => Class().Matches(selector.Value)).Select(name => name.Groups[1].Value).Distinct().ToList();
        classes.Count.ShouldBeGreaterThan(80);
        classes.Where(name => !written.Contains(name) && !Joined.Contains(name)).ShouldBeEmpty();
    }

    [GeneratedRegex("\"(?:[^\"\\\\\n]|\\\\.)*\"|'[^'\n]*'")]
    private static partial Regex Quoted();

    [GeneratedRegex("[a-z][a-z0-9-]*")]
    private static partial Regex Name();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"[^{}]+(?=\{)")]
    private static partial Regex Selector();

    [GeneratedRegex(@"\.([a-z][a-z0-9-]*)")]
    private static partial Regex Class();
}
