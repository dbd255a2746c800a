namespace Byrelaw.Cli.Files;

/// <summary>Says which files of an older report people had filled in, and where what they wrote is kept.</summary>
internal static class KeptNotes
{
    /// <summary>Says it, a line a file.</summary>
    public static void Say(IReadOnlyList<KeptFile> kept, string folder, Doors doors)
    {
        foreach (var file in kept)
        {
            doors.Err.WriteLine($"{Shown(file.Path)} had been filled in or changed by hand; it is kept as {Shown(file.KeptAs)}.");
        }

        string Shown(string path) => PlainText.Clean($"{doors.Show(folder)}/{path}");
    }
}
