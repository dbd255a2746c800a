namespace Byrelaw.Loading;

/// <summary>The records of a programme: where they lie, and what of them is believed.</summary>
public static class RecordsFolder
{
    /// <summary>The full path of the folder that a <c>records</c> line names; a path there starts from the file in which it stands.</summary>
    /// <param name="named">What the line says, with forward slashes.</param>
    /// <param name="programme">The full path of the programme's file.</param>
    public static string Of(string named, string programme) =>
        Path.GetFullPath(named.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(programme)!);

    /// <summary>Reads a folder with the words of a rulebook, and believes its promises as far as the records bear them out.</summary>
    /// <param name="rulebook">With the promises, and what is expected of true records.</param>
    /// <param name="folder">On disk.</param>
    /// <param name="shown">How the folder is named in messages; empty for the current one.</param>
    /// <param name="knownOn">Rows entered after this day are not seen; null for all rows.</param>
    /// <param name="herd">Which herd, where there are several; null for the one.</param>
    /// <exception cref="RecordsNotFoundException">The folder, one of its files or the herd is missing.</exception>
    public static Herd Read(Rulebook rulebook, string folder, string shown, LocalDate? knownOn = null, string? herd = null) =>
        Believed.Of(rulebook, HerdReader.Read(folder, shown, rulebook.Vocabulary, rulebook.Records, knownOn, herd));
}
