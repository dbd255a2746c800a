namespace Byrelaw.Judging.Tests.Documents;

/// <summary>The example farm, read from the checkout.</summary>
internal sealed class WithyBend : IRuleFiles
{
    private const string Folder = "examples/withy-bend/";

    private static readonly Lazy<(RulebookReading Reading, Herd Herd, Draft Draft)> AsOfToday = new(() => KnownOn(null));

    /// <summary>Judged once, with all that is known.</summary>
    public static (RulebookReading Reading, Herd Herd, Draft Draft) Judged => AsOfToday.Value;

    public static (RulebookReading Reading, Herd Herd, Draft Draft) KnownOn(LocalDate? knownOn)
    {
        var reading = RulebookReader.Read(Repository.At(Folder + "spring-2026.byre"), new WithyBend(), knownOn)!;
        var herd = HerdReader.Read(
            Repository.At(Folder + "records"), Folder + "records", reading.Rulebook.Vocabulary, reading.Rulebook.Records, knownOn);
        return (reading, herd, new Judge(reading.Rulebook, herd, knownOn).JudgeAll());
    }

    public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

    public string Show(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
}
