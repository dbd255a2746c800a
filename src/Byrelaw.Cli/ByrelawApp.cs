using Byrelaw.Cli.Commands;

namespace Byrelaw.Cli;

/// <summary>The program: reads its arguments, runs one command, ends with its exit code. Never throws.</summary>
public static class ByrelawApp
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">As given after the program's name.</param>
    /// <param name="doors">Where it writes to and works in.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, Doors doors)
    {
        try
        {
            var code = Invoke(args, doors);
            doors.Out.Flush();
            return code;
        }
        catch (Exception exception)
        {
            return Fail(exception, doors);
        }
    }

    private static int Invoke(string[] args, Doors doors)
    {
        var root = new RootCommand("Judges a herd against the plain-text rules of an embryo-transfer programme, and says why.")
        {
            NewCommand.Make(doors), CheckCommand.Make(doors), TidyCommand.Make(doors), RecordsCommand.Make(doors), DraftCommand.Make(doors), VerifyCommand.Make(doors), WhyCommand.Make(doors),
            CompareCommand.Make(doors), TuneCommand.Make(doors),
            LanguageServerCommand.Make(doors),
            PlanCommand.Make(doors), PairCommand.Make(doors), RecordCommand.Make(doors), FollowCommand.Make(doors), CarryCommand.Make(doors), PackCommand.Make(doors), UnpackCommand.Make(doors), KeyCommand.Make(doors),
        };
        foreach (var version in root.Options.OfType<VersionOption>())
        {
            version.Action = new PrintVersion(doors);
        }

        if (args is [{ Length: > 0 } asked, ..] && char.IsLetter(asked[0]) && !root.Subcommands.Any(command => command.Name == asked))
        {
            var near = NearestName.To(asked, [.. root.Subcommands.Select(command => command.Name)]);
            doors.Err.WriteLine($"byrelaw: there is no command {PlainText.Clean(asked)}{(near is null ? "" : $"; did you mean {near}?")}");
            doors.Err.WriteLine("byrelaw --help lists the commands; byrelaw COMMAND --help says how to use one.");
            return ExitCode.CouldNot;
        }

        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is not System.CommandLine.Help.HelpAction)
        {
            foreach (var error in parsed.Errors.Select(error => error.Message).Distinct())
            {
                doors.Err.WriteLine($"byrelaw: {PlainText.Clean(error)}");
            }

            doors.Err.WriteLine("byrelaw --help lists the commands; byrelaw COMMAND --help says how to use one.");
            return ExitCode.CouldNot;
        }

        return parsed.Invoke(new InvocationConfiguration { Output = doors.Out, Error = doors.Err, EnableDefaultExceptionHandler = false });
    }

    private static int Fail(Exception exception, Doors doors)
    {
        var message = exception switch
        {
            CannotDoException or RecordsNotFoundException => exception.Message,
            IOException or UnauthorizedAccessException => exception.Message.TrimEnd('.'),
            _ => $"something went wrong inside the program, not in your files ({exception.GetType().Name}: {exception.Message})",
        };
        try
        {
            doors.Err.WriteLine($"byrelaw: {PlainText.Clean(message)}");
        }
        catch (IOException)
        {
            // Nobody reads the errors either: the exit code is all that can be said.
        }

        return ExitCode.CouldNot;
    }
}
