namespace Byrelaw.Cli.Tests.Documents;

/// <summary>The day of transfer at Withy Bend, from the book to the run sheet to the record, is as the page tells it.</summary>
public sealed class DayOfTransferPageTests : IDisposable
{
    private const string Programme = "examples/my-bend/spring-2026.byre";

    private readonly CopiedExamples _farm = new("examples/withy-bend") { Now = new(2026, 10, 21, 7, 0, 0, TimeSpan.Zero) };

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void Each_step_is_as_the_page_tells_it()
    {
        Copy();
        var sheet = "";
        ExecutedPage.Verify("docs/day-of-transfer.md", fence => fence.Rest switch
        {
            "book" => Said("record", Programme, "examples/my-bend/fortnight/book.csv", "--by", "farmer", "--recorded", "2026-10-20"),
            "pair" => Drawn(out sheet),
            "filled" => Filled(sheet),
            "record" => Said("record", Programme, sheet, "--by", "farmer", "--out", "rehearsed"),
            "after" => Danger(),
            _ => null,
        });
    }

    private void Copy()
    {
        foreach (var file in Directory.GetFiles(_farm.At("examples/withy-bend"), "*", SearchOption.AllDirectories))
        {
            var copy = file.Replace("withy-bend", "my-bend", StringComparison.Ordinal);
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        foreach (var file in new[] { "embryos.csv", "pedigree.csv" })
        {
            File.Copy(_farm.At($"examples/my-bend/fortnight/{file}"), _farm.At($"examples/my-bend/records/{file}"));
        }
    }

    /// <summary>As far as the hand-over.</summary>
    private string Drawn(out string sheet)
    {
        var said = Said("pair", Programme, "--rehearse", "2026-10-20", "--records-to", "2026-10-20", "--by", "farmer");
        sheet = $"sheets/{Path.GetFileName(Directory.GetFiles(_farm.At("sheets"), "REHEARSAL-T1020-*.csv").Single())}";
        return said[..said.IndexOf("\nEvery row comes back", StringComparison.Ordinal)].TrimEnd('\n') + "\n";
    }

    /// <summary>Everyone got what stands on her line, but for 1066, whose embryo went into 1025.</summary>
    private string Filled(string sheet)
    {
        var lines = File.ReadAllLines(_farm.At(sheet)).Select(line => line.Split(',')).ToArray();
        int At(string heading) => Array.IndexOf(lines[0], heading);
        var straws = File.ReadAllLines(_farm.At("examples/my-bend/records/embryos.csv")).Skip(1).Select(line => line.Split(',')).ToDictionary(line => line[0], line => line[1]);
        var hers = lines.Single(line => line[4] == "1066")[At("transfer: embryo")];
        foreach (var line in lines.Skip(1))
        {
            if (line[4] is "1066" or "1040")
            {
                (line[At("done")], line[At("reason")]) = ("no", line[4] == "1066" ? "no corpus luteum" : "not needed");
                continue;
            }

            line[At("transfer: embryo")] = line[4] == "1025" ? hers : line[At("transfer: embryo")];
            (line[At("ovary check")], line[At("ovary check: side")], line[At("transfer")], line[At("transfer: side")]) = ("corpus luteum", "left", "yes", "left");
            (line[At("transfer: straw read")], line[At("transfer: operator")], line[At("transfer: read by")]) = (straws[line[At("transfer: embryo")]], "vet", "farmer");
        }

        File.WriteAllText(_farm.At(sheet), string.Concat(lines.Select(line => string.Join(',', line) + "\r\n")));
        string[] shown = ["row", "animal", "done", "transfer", "transfer: embryo", "transfer: straw read", "reason"];
        return string.Concat(lines.Select(line => string.Concat(shown.Select(heading => line[At(heading)].PadRight(Math.Max(heading.Length + 2, 8)))).TrimEnd() + "\n"));
    }

    /// <summary>The danger line of the recipients' list.</summary>
    private string Danger()
    {
        var said = Said("draft", $"rehearsed/{Programme}", "--session", "2", "--out", "out");
        return said.Split('\n')[0] + "\n" + said.Split('\n').Last(line => line.Contains("Take as in calf", StringComparison.Ordinal)).Trim() + "\n";
    }

    private string Said(params string[] args)
    {
        var run = _farm.Run(args);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        return $"$ byrelaw {string.Join(' ', args)}\n{Without.Digests(run.Out)}";
    }
}
