namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw unpack FILE FOLDER</c>: checks a pack, says what is new in it, and only then writes its files.</summary>
internal static class UnpackCommand
{
    public static Command Make(Doors doors)
    {
        var file = new Argument<string>("FILE") { Description = "The pack." };
        var folder = new Argument<string>("FOLDER") { Description = "Where its files go." };
        var signer = new Option<string?>("--signed-by") { Description = "Refuse it unless this public key signed it.", HelpName = "KEY.pub" };
        var replace = new Option<bool>("--replace") { Description = "Write over files that differ; without it nothing is written then." };
        var command = new Command("unpack", "Check a pack and write its files into a folder.") { file, folder, signer, replace };
        command.SetAction(parsed => Run(
            parsed.GetValue(file)!, parsed.GetValue(folder)!, parsed.GetValue(signer), parsed.GetValue(replace), doors));
        return command;
    }

    private static int Run(string file, string folder, string? signer, bool replace, Doors doors)
    {
        var (pack, problem) = PackOnDisk.Read(file, doors);
        problem ??= Packer.Check(pack!, JudgedWith.NameAndVersion) ?? SignatureProblem(pack!, signer, doors);
        if (problem is not null)
        {
            doors.Err.WriteLine($"{PlainText.Clean(file)}{(problem.Line > 0 ? $":{problem.Line}" : "")}: error: {PlainText.Clean(problem.Found)}");
            doors.Err.WriteLine($"  help: {PlainText.Clean(problem.Mend)}");
            doors.Err.WriteLine("Nothing was unpacked.");
            return ExitCode.Bad;
        }

        doors.Out.WriteLine($"{PlainText.Clean(file)}: number {pack!.Issue.Number}, packed on {LocalDatePattern.Iso.Format(pack.Issue.PackedOn)} with {PlainText.Clean(pack.MadeWith)}, rulebook {pack.Fingerprint}");
        doors.Out.WriteLine(SignedBy(pack, signer));
        return Write(pack, doors.Full(folder), replace, doors);
    }

    private static PackProblem? SignatureProblem(Pack pack, string? signer, Doors doors)
    {
        if (pack.Signature is not null && !PackSigning.IsGenuine(pack))
        {
            return new PackProblem(6, "the signature does not belong to this pack", "do not unpack it; ask where it comes from");
        }

        if (signer is null)
        {
            return null;
        }

        var full = doors.Full(signer);
        var key = RegularFile.Exists(full) ? KeyFile.ReadPublic(File.ReadAllText(full)) : throw new CannotDoException($"no such file: {signer}");
        if (key is null)
        {
            throw new CannotDoException($"{signer} is not a public key that `byrelaw key` has made");
        }

        return pack.Signature is null ? new PackProblem(0, "nobody has signed it", "ask for a signed one, or leave --signed-by away")
            : pack.Signature.PublicKey.AsSpan().SequenceEqual(key) ? null
            : new PackProblem(6, $"another key than {signer} has signed it", "ask whose key it is before you trust the pack");
    }

    private static string SignedBy(Pack pack, string? signer) => pack.Signature is null ? "Nobody has signed it."
        : signer is null ? $"Signed with the key {Convert.ToBase64String(pack.Signature.PublicKey.AsSpan())}; whose that is was not checked (--signed-by)."
        : $"Signed with the key in {PlainText.Clean(signer)}.";

    /// <summary>What the rules that are there would become, rule by rule; or why that cannot be said.</summary>
    private static string WhatChanges(Pack pack, string folder, Doors doors)
    {
        var there = Path.Combine(folder, pack.Opens.Replace('/', Path.DirectorySeparatorChar));
        var old = RulebookReader.Read(there, new RuleFilesOnDisk(doors.Folder));
        if (old is null || old.HasErrors)
        {
            return old is null ? $"\n{pack.Opens} is not there yet, so there is nothing to compare it with.\n\n"
                : $"\n{doors.Show(there)} has errors, so the rules there cannot be compared with those of the pack; byrelaw check says what is wrong.\n\n";
        }

        var @new = RulebookReader.Read(pack.Opens, new PackedRuleFiles(pack))!;
        var report = new ComparisonReport(doors.Show(there), pack.Opens, RulebookComparison.Of(old.Rulebook, @new.Rulebook), Herd: null);
        return report.Rules.IsEmpty ? "\nThe files differ, and the rules say the same.\n\n"
            : $"\nFrom what is there to what the pack holds: {CompareText.Of(report, doors.OutInk)}\n";
    }

    private static int Write(Pack pack, string folder, bool replace, Doors doors)
    {
        if (File.Exists(folder))
        {
            throw new CannotDoException($"{doors.Show(folder)} is a file; nothing was changed");
        }

        FilesTogether.FinishIn(folder);
        var others = new List<PackedFile>();
        var differing = new List<PackedFile>();
        foreach (var file in pack.Files)
        {
            var state = UnpackTarget.StateOf(folder, file);
            (state == TargetState.Differs ? differing : others).Add(file);
            doors.Out.WriteLine($"  {file.Path}: {state switch { TargetState.New => "new", TargetState.Same => "the same as there", _ => "differs from the one there" }}");
        }

        if (differing.Count > 0)
        {
            doors.Out.Write(WhatChanges(pack, folder, doors));
        }

        if (!replace && (differing.Count > 0 || IsOlder(pack, folder)))
        {
            doors.Err.WriteLine(WhyNotWritten(pack, folder, differing.Count));
            return ExitCode.Bad;
        }

        FilesTogether.Write(folder, [
            .. differing.Concat(others.Where(file => UnpackTarget.StateOf(folder, file) == TargetState.New)).Select(file => new FileToWrite(file.Path, file.Bytes.AsMemory())),
            UnpackedFrom.With(folder, pack),
        ]);
        doors.Out.WriteLine($"Unpacked. Next: byrelaw check {doors.Show(Path.Combine(folder, pack.Opens))}");
        return ExitCode.Done;
    }

    private static bool IsOlder(Pack pack, string folder) => UnpackedFrom.Last(folder, pack.Opens) is { } last && pack.Issue.IsBefore(last);

    private static string WhyNotWritten(Pack pack, string folder, int differing)
    {
        var why = differing == 0 ? "Nothing was written."
            : $"{Numbers.Count(differing, "file differs", "files differ")} from what is there, and nothing was written. Unpack into a new folder to look at it, also with byrelaw compare and your records; "
                + $"--replace writes over {(differing == 1 ? "it" : "them")}.";
        return IsOlder(pack, folder) && UnpackedFrom.Last(folder, pack.Opens) is { } last
            ? $"This pack is older than the one that was unpacked here before: that was number {last.Number}, packed on {LocalDatePattern.Iso.Format(last.PackedOn)}. --replace goes back to it all the same. {why}"
            : why;
    }
}
