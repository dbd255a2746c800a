namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw tidy FILE…</c>: prints rule files the one way, or with <c>--write</c> writes them. What they say stays the same, or they are left alone.</summary>
internal static class TidyCommand
{
    public static Command Make(Doors doors)
    {
        var files = new Argument<string[]>("FILE") { Description = "Rule files; - reads one from the standard input.", Arity = ArgumentArity.OneOrMore };
        var write = new Option<bool>("--write") { Description = "Write the files instead of printing them." };
        var check = new Option<bool>("--check") { Description = "Only say which files are not tidy; change nothing." };
        var command = new Command("tidy", "Print rule files the one way: the same rules, every comment kept, everything in its place.") { files, write, check };
        command.SetAction(parsed => Run(parsed.GetValue(files)!, new How(parsed.GetValue(write), parsed.GetValue(check)), doors));
        return command;
    }

    private static int Run(string[] files, How how, Doors doors)
    {
        if (how is { Writes: true, Checks: true })
        {
            throw new CannotDoException("--check changes nothing and --write writes: give one of the two");
        }

        if (how.Writes && files.Contains(StandardInput.Sign))
        {
            throw new CannotDoException("what comes in on the standard input cannot be written back; leave out --write, and it is printed");
        }

        var worst = ExitCode.Done;
        foreach (var file in files)
        {
            worst = Math.Max(worst, One(file, how, files.Length > 1, doors));
        }

        return worst;
    }

    private static int One(string file, How how, bool isOneOfSeveral, Doors doors)
    {
        try
        {
            var isInput = file == StandardInput.Sign;
            var (path, source) = isInput ? Input(doors) : (OnDisk(file, doors), new RuleFilesOnDisk(doors.Folder));
            var result = Tidier.Tidy(path, source) ?? throw new CannotDoException($"no such file: {file}");
            return result.Text is null ? LeftAlone(result, doors)
                : how.Checks ? Check(result, doors)
                : how.Writes ? Write(result, path, doors)
                : Print(result, isOneOfSeveral, doors);
        }
        catch (Exception exception) when (exception is CannotDoException or IOException or UnauthorizedAccessException)
        {
            doors.Err.WriteLine($"byrelaw: {PlainText.Clean(exception.Message.TrimEnd('.'))}");
            return ExitCode.CouldNot;
        }
    }

    private static string OnDisk(string file, Doors doors)
    {
        var path = doors.Full(file);
        return Directory.Exists(path) ? throw new CannotDoException($"{file} is a folder; give a rule file, such as {file.TrimEnd('/')}/spring.byre") : path;
    }

    private static (string Path, IRuleFiles Files) Input(Doors doors)
    {
        using var bytes = new MemoryStream();
        using (var input = doors.In())
        {
            input.CopyTo(bytes);
        }

        var path = doors.Full(StandardInput.Sign);
        return (path, StandardInput.Among(new RuleFilesOnDisk(doors.Folder), path, bytes.ToArray()));
    }

    /// <summary>Several files follow each other, each after its name in a comment, so that what is printed can be read as rules still.</summary>
    private static int Print(TidyResult result, bool isOneOfSeveral, Doors doors)
    {
        doors.Out.Write((isOneOfSeveral ? $"# {PlainText.Clean(result.Source.Path)}\n" : "") + result.Text);
        return ExitCode.Done;
    }

    private static int Write(TidyResult result, string path, Doors doors)
    {
        var shown = PlainText.Clean(result.Source.Path);
        if (result.IsTidy)
        {
            LeftOvers.ClearBeside(path);
        }
        else
        {
            WholeFile.Replace(path, Encoding.UTF8.GetBytes(result.Text!));
        }

        doors.Out.WriteLine($"{shown}: {(result.IsTidy ? "tidy already" : "tidied")}");
        return ExitCode.Done;
    }

    private static int Check(TidyResult result, Doors doors)
    {
        doors.Out.Write(result.IsTidy ? $"{PlainText.Clean(result.Source.Path)}: tidy\n" : FirstDifference.Of(result));
        return result.IsTidy ? ExitCode.Done : ExitCode.Bad;
    }

    private static int LeftAlone(TidyResult result, Doors doors)
    {
        var problems = new Problems();
        problems.Add(result.Errors);
        problems.Print(doors);
        var shown = PlainText.Clean(result.Source.Path);
        doors.Err.WriteLine(result.WouldChange is { } what
            ? $"{shown}: left as it is. Tidying would have changed {what}, which is a mistake in this program and not in your file."
            : $"{shown}: left as it is. Mend {(result.Errors.Length == 1 ? "the error" : "the errors")} first.");
        return ExitCode.Bad;
    }

    /// <summary>What to do with what is tidied: print it, where neither is asked for.</summary>
    private readonly record struct How(bool Writes, bool Checks);
}
