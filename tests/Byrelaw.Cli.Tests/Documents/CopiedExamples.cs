namespace Byrelaw.Cli.Tests.Documents;

/// <summary>Example farms, the two unless others are named, and the base rules in a folder of their own, to be written to.</summary>
internal sealed class CopiedExamples : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("byrelaw-examples-").FullName;
    private readonly FixedClock _clock = new() { Now = new DateTimeOffset(2026, 10, 12, 17, 0, 0, TimeSpan.Zero) };

    public CopiedExamples(string example = "examples/two-farms")
    {
        foreach (var part in new[] { example, "rulesets" })
        {
            foreach (var file in Directory.EnumerateFiles(Repository.At(part), "*", SearchOption.AllDirectories).Where(file => !file.EndsWith(".jsonl", StringComparison.Ordinal)))
            {
                var copy = At(Path.GetRelativePath(Repository.Root, file));
                Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
                File.Copy(file, copy);
            }
        }
    }

    /// <summary>The clock.</summary>
    public DateTimeOffset Now { init => _clock.Now = value; }

    public string At(string path) => Path.Combine(_folder, path);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Runs the program in the folder; each run is an hour later than the one before.</summary>
    public Run Run(params string[] args)
    {
        _clock.Now = _clock.Now.AddHours(1);
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var code = ByrelawApp.Run(args, Doors.Plain(@out, err, _folder) with { Clock = _clock });
        return new Run(code, @out.ToString(), err.ToString());
    }
}
