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
        if (File.Exists(open))
        {
            throw new CannotDoException($"{doors.Show(open)} is there already; nothing was changed. Give another name");
        }

        var key = PackSigning.NewPrivateKey();
        WholeFile.WriteNew(full, KeyFile.OfPrivate(key), doors, forOwnerOnly: true);
        WholeFile.WriteNew(open, KeyFile.OfPublic(PackSigning.PublicKeyOf(key)), doors);
        doors.Out.WriteLine($"{doors.Show(full)}: your private key. Whoever has it can sign in your name: keep it to yourself.");
        doors.Out.WriteLine($"{doors.Show(open)}: your public key. Hand it to those who are to check your packs, by a way that they trust.");
        return ExitCode.Done;
    }
}
