namespace Byrelaw.LanguageServer.Answers;

/// <summary>Follows a thing through every file that shares its declaration: those that are open, and the rule files of the
/// folders that are open in the editor.</summary>
internal static class Everywhere
{
    /// <summary>Every place where the thing is named. A file that several others use is told once for each of them.</summary>
    public static IEnumerable<(RootReading Reading, NameUse Use)> Uses(Workspace workspace, RootReading reading, NamedThing thing)
    {
        var homes = Homes(reading, thing);
        foreach (var other in Readings(workspace, reading))
        {
            if (other == reading || homes.Overlaps(Homes(other, thing)))
            {
                foreach (var use in other.View.UsesOf(thing))
                {
                    yield return (other, use);
                }
            }
        }
    }

    /// <summary>Every reading that the editor's files give: the one asked about, the open ones, the folders'.</summary>
    public static IEnumerable<RootReading> Readings(Workspace workspace, RootReading first) =>
        workspace.Files.Open.Keys.Concat(RuleFilesInFolders.Of(workspace.Files.Folders)).Prepend(first.Path).ToHashSet(StringComparer.Ordinal)
            .Select(workspace.Reading).OfType<RootReading>();

    /// <summary>Where the thing is declared, as paths and places; two rulebooks mean the same thing where they share one.</summary>
    private static HashSet<(string Path, int Start)> Homes(RootReading reading, NamedThing thing) =>
        [.. reading.View.UsesOf(thing).Where(use => use.Declares).Select(use => (reading.PathOf(use.Span.File.Path), use.Span.Start))];
}
