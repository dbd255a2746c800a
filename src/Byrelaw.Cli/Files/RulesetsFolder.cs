namespace Byrelaw.Cli.Files;

/// <summary>Finds the shared base rules: around the farm's folder, beside the program, or in the checkout around it.</summary>
public static class RulesetsFolder
{
    /// <summary>The folder's name.</summary>
    public const string Name = "rulesets";

    /// <summary>Where they are; null where they are not found.</summary>
    public static string? Find(string nearFolder) =>
        Above(nearFolder).Concat(Above(AppContext.BaseDirectory)).Select(folder => Path.Combine(folder, Name))
            .FirstOrDefault(folder => File.Exists(Path.Combine(folder, "vocabulary.byre")));

    private static IEnumerable<string> Above(string folder)
    {
        for (var place = new DirectoryInfo(folder); place is not null; place = place.Parent)
        {
            yield return place.FullName;
        }
    }
}
