namespace Byrelaw.Loading;

/// <summary>Where the records of a programme lie.</summary>
public static class RecordsFolder
{
    /// <summary>The full path of the folder that a <c>records</c> line names; a path there starts from the file in which it stands.</summary>
    /// <param name="named">What the line says, with forward slashes.</param>
    /// <param name="programme">The full path of the programme's file.</param>
    public static string Of(string named, string programme) =>
        Path.GetFullPath(named.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(programme)!);
}
