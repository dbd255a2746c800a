using Byrelaw.Language.BaseRules;

namespace Byrelaw.Cli.Files;

/// <summary>The base vocabulary's newest edition, for records that no programme names.</summary>
internal static class BaseWords
{
    private const string Name = "vocabulary";

    /// <summary>How it is named to people.</summary>
    public static string Shown => $"base {Name} edition {BaseEditions.Newest}";

    /// <summary>Reads it.</summary>
    public static RulebookReading Read(Doors doors) => RulebookReader.Read(BaseEditions.Path(BaseEditions.Newest, Name), new RuleFilesOnDisk(doors.Folder), knownOn: null, doors.Today)!;
}
