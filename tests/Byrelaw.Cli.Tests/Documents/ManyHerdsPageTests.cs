using System.Text.RegularExpressions;

namespace Byrelaw.Cli.Tests.Documents;

/// <summary>What the page on many herds says of its four made-up tables is what comes out.</summary>
public sealed partial class ManyHerdsPageTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void The_pages_tables_become_herds()
    {
        _farm.Write("vocabulary.byre", File.ReadAllText(Repository.At("rulesets/vocabulary.byre")));
        var stated = 0;
        ExecutedPage.Verify("docs/many-herds.md", fence =>
        {
            switch (fence.Language)
            {
                case "csv":
                    _farm.Write($"tables/{fence.Rest}", fence.Text);
                    return null;
                case "byre":
                    _farm.Write(fence.Rest, fence.Text);
                    return null;
                case "herds":
                    stated++;
                    var run = _farm.Run("draft", "herds.byre", "--each-herd", "--format", "ndjson", "--known-on", "2009-03-01");
                    run.Code.ShouldBe(ExitCode.Done, run.Err);
                    return string.Concat(run.Out.Split('\n').Where(line => line.Contains("\"animals\":", StringComparison.Ordinal)).Select(line => Digest().Replace(line, "sha256:...") + "\n"));
                default:
                    return null;
            }
        });

        stated.ShouldBe(1);
    }

    [GeneratedRegex("sha256:[0-9a-f]+")]
    private static partial Regex Digest();
}
