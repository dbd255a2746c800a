namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw pack PROGRAMME -o FILE</c>: a programme's rule files in one text, to hand on.</summary>
internal static class PackCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file, or any rule file." };
        var file = new Option<string>("--out", "-o") { Description = "The pack to write; nothing is overwritten.", HelpName = "FILE", Required = true };
        var key = new Option<string?>("--sign") { Description = "Sign it with this private key (see byrelaw key).", HelpName = "KEY" };
        var number = new Option<int?>("--number") { Description = "Which pack of these rules this is, counted from 1; without it one more than the newest that lies where it goes.", HelpName = "N" };
        var command = new Command("pack", "Write a programme's rule files into one text that can be handed on and checked.") { programme, file, key, number };
        command.SetAction(parsed => Run(parsed.GetValue(programme)!, parsed.GetValue(file)!, parsed.GetValue(key), parsed.GetValue(number), doors));
        return command;
    }

    private static int Run(string programme, string file, string? keyFile, int? number, Doors doors)
    {
        if (number is < 1)
        {
            throw new CannotDoException("--number wants a whole number from 1 on");
        }

        var files = new RuleFilesKept(new RuleFilesOnDisk(doors.Folder));
        var reading = RulebookReader.Read(doors.Full(programme), files) ?? throw new CannotDoException($"no such file: {programme}");
        var problems = new Problems();
        problems.Add(reading.Problems);
        problems.Print(doors);
        if (reading.HasErrors)
        {
            doors.Err.WriteLine($"{problems.Counted()}. What is packed must be whole: mend them first.");
            return ExitCode.Bad;
        }

        var root = CommonFolder.Of([.. files.Kept.Keys]);
        var (target, opens) = (doors.Full(file), InPack(doors.Full(programme), root));
        var issue = new PackIssue(doors.Today, number ?? PackOnDisk.NewestNumber(Path.GetDirectoryName(target)!, opens) + 1);
        var (pack, problem) = Packer.Pack(opens, files.Kept.Select(kept => new PackedFile(InPack(kept.Key, root), kept.Value)), JudgedWith.NameAndVersion, issue);
        if (pack is null)
        {
            throw new CannotDoException($"this cannot be packed: {problem!.Found}; {problem.Mend}");
        }

        pack = keyFile is null ? pack : PackSigning.Sign(pack, Key(keyFile, doors));
        NewFile.Write(target, PackWriter.Write(pack), doors);
        doors.Out.WriteLine($"{PlainText.Clean(doors.Show(target))}: number {issue.Number}, {Numbers.Count(pack.Files.Length, "file", "files")}, rulebook {pack.Fingerprint}{(pack.Signature is null ? ", not signed" : ", signed")}");
        return ExitCode.Done;
    }

    private static string InPack(string full, string root) => Path.GetRelativePath(root, full).Replace(Path.DirectorySeparatorChar, '/');

    private static byte[] Key(string file, Doors doors)
    {
        var full = doors.Full(file);
        if (!RegularFile.Exists(full))
        {
            throw new CannotDoException($"no such file: {file}; `byrelaw key {file}` makes a key");
        }

        if (!OperatingSystem.IsWindows() && (File.GetUnixFileMode(full) & ~WholeFile.OwnerOnly) != 0)
        {
            doors.Err.WriteLine($"warning: others on this machine may read {PlainText.Clean(file)}, and whoever reads it can sign in your name. Keep it to yourself: chmod 600 {PlainText.Clean(file)}");
        }

        return KeyFile.ReadPrivate(File.ReadAllText(full)) ?? throw new CannotDoException($"{file} is not a private key that `byrelaw key` has made");
    }
}
