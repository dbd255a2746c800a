namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw key FILE</c>: makes a pair of keys, to sign packs with and to check them.</summary>
internal static class KeyCommand
{
    public static Command Make(Doors doors)
    {
        var file = new Argument<string>("FILE") { Description = "Where the private key goes; the public one goes beside it, as FILE.pub." };
        var command = new Command("key", "Make a key to sign packs with, and its public half for those who check them.") { file };
        command.SetAction(parsed => Run(parsed.GetValue(file)!, doors));
        return command;
    }

    private static int Run(string file, Doors doors)
    {
        var (full, open) = (doors.Full(file), doors.Full(file + ".pub"));

        // A run that was cut off between the two halves is finished first.
        FilesTogether.FinishIn(Path.GetDirectoryName(full)!);
        if (new[] { full, open }.FirstOrDefault(Path.Exists) is { } there)
        {
            throw new CannotDoException($"{doors.Show(there)} is there already; nothing was changed. Give another name");
        }

        var key = PackSigning.NewPrivateKey();
        FilesTogether.Write(Path.GetDirectoryName(full)!, [
            new(Path.GetFileName(full), Encoding.UTF8.GetBytes(KeyFile.OfPrivate(key)), WholeFile.OwnerOnly),
            new(Path.GetFileName(open), Encoding.UTF8.GetBytes(KeyFile.OfPublic(PackSigning.PublicKeyOf(key)))),
        ], onlyNew: true);
        doors.Out.WriteLine($"{doors.Show(full)}: your private key. Whoever has it can sign in your name: keep it to yourself.");
        doors.Out.WriteLine($"{doors.Show(open)}: your public key. Hand it to those who are to check your packs, by a way that they trust.");
        return ExitCode.Done;
    }
}
