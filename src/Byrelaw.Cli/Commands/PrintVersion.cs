using System.CommandLine.Invocation;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw --version</c>: the name and version that every report carries.</summary>
internal sealed class PrintVersion(Doors doors) : SynchronousCommandLineAction
{
    public override bool Terminating => true;

    public override int Invoke(ParseResult parseResult)
    {
        doors.Out.WriteLine(JudgedWith.NameAndVersion);
        return ExitCode.Done;
    }
}
