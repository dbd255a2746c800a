namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw tidy FILE…</c>: prints rule files the one way. What they say stays the same, or they are left alone.</summary>
internal static class TidyCommand
{
    public static Command Make(Doors doors)
    {
        var files = new Argument<string[]>("FILE") { Description = "Rule files; - reads one from the standard input and prints it.", Arity = ArgumentArity.OneOrMore };
        var check = new Option<bool>("--check") { Description = "Only say which files are not tidy; change nothing." };
        var command = new Command("tidy", "Print rule files the one way: the same rules, every comment kept, everything in its place.") { files, check };
        command.SetAction(parsed => Run(parsed.GetValue(files)!, parsed.GetValue(check), doors));
        return command;
    }

    private static int Run(string[] files, bool checks, Doors doors)
    {
        var worst = ExitCode.Done;
        foreach (var file in files)
        {
            worst = Math.Max(worst, One(file, checks, doors));
        }

        return worst;
    }

    private static int One(string file, bool checks, Doors doors)
    {
        try
        {
            var isInput = file == StandardInput.Sign;
            var (path, source) = isInput ? Input(doors) : (OnDisk(file, doors), new RuleFilesOnDisk(doors.Folder));
            var result = Tidier.Tidy(path, source) ?? throw new CannotDoException($"no such file: {file}");
            return result.Text is null ? LeftAlone(result, doors)
                : checks ? Check(result, doors)
                : isInput ? Print(result.Text, doors)
                : Tidy(result, path, doors);
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
        return (path, new StandardInput(new RuleFilesOnDisk(doors.Folder), path, bytes.ToArray()));
    }

    private static int Print(string text, Doors doors)
    {
        doors.Out.Write(text);
        return ExitCode.Done;
    }

    private static int Tidy(TidyResult result, string path, Doors doors)
    {
        var shown = PlainText.Clean(result.Source.Path);
        if (!result.IsTidy)
        {
            WholeFile.Replace(path, result.Text!, doors);
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
}
