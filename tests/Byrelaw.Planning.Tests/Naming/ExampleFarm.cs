using Byrelaw.Judging;
using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.Tests.Naming;

/// <summary>An example farm, read from the checkout and judged as known on a day.</summary>
internal sealed class ExampleFarm : IRuleFiles
{
    public static Draft Draft(string folder, string programme, LocalDate? knownOn = null)
    {
        var reading = RulebookReader.Read(Repository.At($"{folder}/{programme}"), new ExampleFarm(), knownOn)!;
        var herd = Believed.Of(reading.Rulebook, HerdReader.Read(Repository.At(folder + "/records"), folder + "/records", reading.Rulebook.Vocabulary, reading.Rulebook.Records, knownOn));
        return new Judge(reading.Rulebook, herd, knownOn).JudgeAll();
    }

    public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

    public string Show(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
}
