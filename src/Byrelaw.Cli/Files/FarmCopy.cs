using Byrelaw.Workshop.Packing;

namespace Byrelaw.Cli.Files;

/// <summary>A farm copied with all that it is judged by, rule files and records, to be tried out: what is done to the copy is done to nobody.</summary>
internal static class FarmCopy
{
    /// <summary>Copies it where it is not there yet.</summary>
    /// <param name="programme">The programme's file, as given.</param>
    /// <param name="folder">Where the copy lies, as given.</param>
    /// <param name="doors">Where relative paths start.</param>
    /// <returns>The copy's programme: full path.</returns>
    /// <exception cref="CannotDoException">Something else lies there, or the records are not beside the rule files.</exception>
    public static string Into(string programme, string folder, Doors doors)
    {
        var rules = new RuleFilesKept(new RuleFilesOnDisk(doors.Folder));
        var full = doors.Full(programme);
        var reading = RulebookReader.Read(full, rules) ?? throw new CannotDoException($"no such file: {programme}");
        var records = reading.Rulebook.Records is { } keeping ? RecordsFolder.Of(keeping.Folder, full) : throw new CannotDoException($"{programme} names no records");
        var files = rules.Kept.Where(file => Path.IsPathRooted(file.Key)).ToDictionary(file => file.Key, file => (ReadOnlyMemory<byte>)file.Value.AsMemory());
        foreach (var path in Directory.EnumerateFiles(records, "*", SearchOption.AllDirectories).Where(path => !Path.GetFileName(path).StartsWith('.')))
        {
            files[path] = RegularFile.Read(path);
        }

        var (root, target) = (CommonFolder.Of([.. files.Keys, full]), doors.Full(folder));
        var copy = Path.Combine(target, Path.GetRelativePath(root, full));
        if ((target + Path.DirectorySeparatorChar).StartsWith(Path.TrimEndingDirectorySeparator(records) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
        {
            throw new CannotDoException($"{folder} lies within the records themselves; give another folder");
        }

        if (!File.Exists(copy))
        {
            if (File.Exists(target) || (Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any()))
            {
                throw new CannotDoException($"{folder} holds something else than a copy of this farm; nothing was written. Give a new folder");
            }

            FilesTogether.Write(target, [.. files.Select(file => new FileToWrite(Path.GetRelativePath(root, file.Key).Replace(Path.DirectorySeparatorChar, '/'), file.Value))]);
        }

        return copy;
    }
}
