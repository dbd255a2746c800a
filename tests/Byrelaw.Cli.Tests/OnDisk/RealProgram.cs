using System.Diagnostics;

namespace Byrelaw.Cli.Tests.OnDisk;

/// <summary>
/// The program as a process of its own, which can be killed. Where <c>BYRELAW_PROGRAM</c> names a published one that is run; else the one that
/// lies beside the tests.
/// </summary>
internal static class RealProgram
{
    private static readonly string? Published = Environment.GetEnvironmentVariable("BYRELAW_PROGRAM");

    public static Process Start(string folder, params string[] args) => StartAfter(null, folder, args);

    /// <summary>Starts it from a shell, where that is to set something first.</summary>
    public static Process StartAfter(string? before, string folder, params string[] args)
    {
        string[] program = Published is null ? ["dotnet", Path.Combine(AppContext.BaseDirectory, "byrelaw.dll")] : [Published];
        string[] line = before is null ? [.. program, .. args] : ["bash", "-c", $"{before}; exec \"$@\"", "bash", .. program, .. args];
        var start = new ProcessStartInfo(line[0], line[1..]) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };

        // Where files may not grow, the runtime's own shared memory may not either.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        return Process.Start(start)!;
    }

    public static Run Run(string folder, params string[] args) => End(Start(folder, args));

    public static Run End(Process process)
    {
        using (process)
        {
            var err = process.StandardError.ReadToEndAsync();
            var @out = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return new Run(process.ExitCode, @out, err.GetAwaiter().GetResult());
        }
    }
}
