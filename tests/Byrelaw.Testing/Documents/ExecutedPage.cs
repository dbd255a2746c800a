namespace Byrelaw.Testing.Documents;

/// <summary>Holds a page of the repository to what the program really does with its examples.</summary>
public static class ExecutedPage
{
    /// <summary>Works out what the page should say and compares. <c>SNAPSHOT_UPDATE=1</c> writes it, except on a build server.</summary>
    /// <param name="page">Below the repository's root, forward slashes.</param>
    /// <param name="outcome">The new text of each block that states an outcome; null for blocks that state none.</param>
    public static void Verify(string page, Func<Fence, string?> outcome)
    {
        var path = Repository.At(page);
        var stated = File.ReadAllText(path).ReplaceLineEndings("\n");
        var real = MarkdownPage.Rewrite(stated, outcome);
        if (string.Equals(stated, real, StringComparison.Ordinal))
        {
            return;
        }

        if (Environment.GetEnvironmentVariable("SNAPSHOT_UPDATE") == "1" && Environment.GetEnvironmentVariable("CI") is null)
        {
            File.WriteAllText(path, real);
            return;
        }

        throw new SnapshotMismatchException($"{page} says something else than the program\n{Snapshot.Diff(stated, real)}");
    }
}
