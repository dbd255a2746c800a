namespace Byrelaw.Cli.Tests.Documents;

/// <summary>A newcomer's way from an untidy export to a first list is as the page tells it, step by step.</summary>
public sealed class FirstListPageTests : IDisposable
{
    private const string Programme = "Stony Field/programme.byre";

    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void Each_step_is_as_the_page_tells_it()
    {
        _farm.Clock.Now = new DateTimeOffset(2026, 9, 30, 8, 0, 0, TimeSpan.Zero);
        Directory.CreateDirectory(_farm.At("export"));
        foreach (var file in Directory.GetFiles(Repository.At("tests/Byrelaw.Cli.Tests/Documents/StonyField")))
        {
            File.Copy(file, _farm.At($"export/{Path.GetFileName(file)}"));
        }

        var (stated, suggested, chosen, typed) = (0, "", "", Array.Empty<string>());
        ExecutedPage.Verify("docs/first-list.md", fence =>
        {
            switch (fence.Language, fence.Rest)
            {
                case ("byre", "suggested"):
                    return suggested = Block();
                case ("byre", "chosen"):
                    chosen = fence.Text;
                    _farm.Change(Programme, Block(), chosen);
                    return null;
                case ("text", "typed"):
                    typed = fence.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
                    return null;
                default:
                    stated++;
                    var run = _farm.Run([.. fence.Rest.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))]);
                    run.Err.ShouldBe("");
                    return Without.Digests(run.Out);
            }
        });

        stated.ShouldBe(3);
        string[] offered = [.. suggested.Split('\n').Select(line => Unremarked(line.Trim()))];
        chosen.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Trim()).Where(line => !offered.Contains(line)).ShouldBe(typed, ignoreOrder: true, "what is not typed was suggested");
    }

    private string Block()
    {
        var text = File.ReadAllText(_farm.At(Programme));
        var start = text.IndexOf("records \"records\"", StringComparison.Ordinal);
        return text[start..text.IndexOf("\nprogramme ", StringComparison.Ordinal)];
    }

    private static string Unremarked(string line)
    {
        line = line.StartsWith("# ? ", StringComparison.Ordinal) ? line[4..] : line;
        return line.IndexOf("  # ", StringComparison.Ordinal) is > 0 and var at ? line[..at] : line;
    }
}
