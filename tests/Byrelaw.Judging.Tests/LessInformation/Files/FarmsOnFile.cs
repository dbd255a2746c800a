namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>The example farms of this repository, and other farms where a folder of them is named.</summary>
/// <remarks>
/// <c>BYRELAW_FARMS</c> names a folder with one folder a farm: a programme and its records, as in <c>examples</c>. Real herds are
/// not in this repository; without them the examples are tried alone.
/// </remarks>
internal sealed class FarmsOnFile : IRuleFiles
{
    private const string Variable = "BYRELAW_FARMS";

    private static readonly Lazy<ImmutableArray<FarmOnFile>> OfExamples = new(() => In(Repository.At("examples")));
    private static readonly Lazy<ImmutableArray<FarmOnFile>> Named = new(() =>
        Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } folder ? In(folder) : OfExamples.Value);

    /// <summary>The farms that random trials draw from.</summary>
    public static ImmutableArray<FarmOnFile> All => Named.Value;

    /// <summary>The farms of this repository.</summary>
    public static ImmutableArray<FarmOnFile> Examples => OfExamples.Value;

    public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

    public string Show(string path) => path;

    byte[]? IRuleFiles.Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;

    private static ImmutableArray<FarmOnFile> In(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*.byre", SearchOption.AllDirectories).Order(StringComparer.Ordinal).SelectMany(Farms)];

    private static IEnumerable<FarmOnFile> Farms(string programme)
    {
        var rulebook = RulebookReader.Read(programme, new FarmsOnFile())!.Rulebook;
        if (rulebook is { Programme.Choices.IsEmpty: false, Records: { } keeping })
        {
            var records = Path.Combine(Path.GetDirectoryName(programme)!, keeping.Folder);
            yield return new FarmOnFile(Path.GetFileName(Path.GetDirectoryName(programme)) + "/" + Path.GetFileName(programme), rulebook, RecordFiles.Read(records));
        }
    }
}
