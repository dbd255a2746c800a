namespace Byrelaw.Cli.Files;

/// <summary>A file that a command writes where none was.</summary>
internal static class NewFile
{
    /// <summary>Writes it.</summary>
    /// <exception cref="CannotDoException">Something is there already.</exception>
    public static void Write(string full, ReadOnlySpan<byte> bytes, Doors doors)
    {
        if (!WholeFile.WriteNew(full, bytes))
        {
            throw new CannotDoException($"{doors.Show(full)} is there already; nothing was changed. Give another name");
        }
    }
}
