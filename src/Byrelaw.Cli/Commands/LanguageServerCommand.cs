using Byrelaw.LanguageServer;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw language-server</c>: serves an editor over standard input and output.</summary>
internal static class LanguageServerCommand
{
    public static Command Make(Doors doors)
    {
        // Editors that start several kinds of servers say how they talk; this one talks in no other way.
        var stdio = new Option<bool>("--stdio") { Description = "Talk over standard input and output, which it does anyway." };
        var command = new Command("language-server", "Help an editor with rule files; the editor starts it.") { stdio };
        command.SetAction(_ => LanguageServerProgram.Run(Console.OpenStandardInput(), Console.OpenStandardOutput(), doors.Err));
        return command;
    }
}
