using System.Runtime.CompilerServices;
using System.Text;
using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;

namespace Byrelaw.Testing;

/// <summary>
/// Holds what people read to an approved copy that lies beside the test, named
/// <c>Class.Method.verified.EXT</c>. A missing copy fails; <c>SNAPSHOT_UPDATE=1</c> writes it,
/// except on a build server, where nothing may approve itself.
/// </summary>
public static class Snapshot
{
    /// <summary>Compares <paramref name="actual"/> with the approved copy.</summary>
    /// <param name="actual">The whole text, line ends in any form.</param>
    /// <param name="name">Tells two snapshots of one test apart; empty for the only one.</param>
    /// <param name="extension">The file's ending without a dot.</param>
    /// <param name="sourceFile">Filled in by the compiler.</param>
    /// <param name="method">Filled in by the compiler.</param>
    public static void Verify(
        string actual, string name = "", string extension = "txt",
        [CallerFilePath] string sourceFile = "", [CallerMemberName] string method = "")
    {
        var folder = Path.GetDirectoryName(Repository.Resolve(sourceFile))!;
        var suffix = name.Length == 0 ? "" : "." + name;
        var path = Path.Combine(folder, $"{Path.GetFileNameWithoutExtension(sourceFile)}.{method}{suffix}.verified.{extension}");
        var text = actual.ReplaceLineEndings("\n");
        var approved = File.Exists(path) ? File.ReadAllText(path, Encoding.UTF8).ReplaceLineEndings("\n") : null;
        if (string.Equals(approved, text, StringComparison.Ordinal))
        {
            return;
        }

        if (Environment.GetEnvironmentVariable("SNAPSHOT_UPDATE") == "1" && Environment.GetEnvironmentVariable("CI") is null)
        {
            File.WriteAllText(path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            return;
        }

        throw new SnapshotMismatchException(
            approved is null
                ? $"No approved copy: {path}\nSNAPSHOT_UPDATE=1 writes it. What was made:\n{text}"
                : $"Differs from {path}\n{Diff(approved, text)}");
    }

    internal static string Diff(string approved, string actual)
    {
        var diff = InlineDiffBuilder.Diff(approved, actual);
        var lines = new StringBuilder();
        foreach (var line in diff.Lines.Where(line => line.Type != ChangeType.Unchanged))
        {
            lines.Append(line.Type == ChangeType.Inserted ? "+ " : "- ").Append(line.Text).Append('\n');
        }

        return lines.ToString();
    }
}
