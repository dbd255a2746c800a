namespace Byrelaw.LanguageServer;

/// <summary>The language server: an editor starts it and talks to it over two streams (LSP 3.17).</summary>
public static class LanguageServerProgram
{
    /// <summary>Serves one editor until it says that it is done, or goes. Never throws.</summary>
    /// <param name="input">The editor's messages.</param>
    /// <param name="output">The server's; nothing else may be written there.</param>
    /// <param name="log">Receives a line for everything that went wrong.</param>
    /// <param name="clock">Says what day it is; null for the system's.</param>
    /// <returns>The process's exit code: 0 after a proper end, 1 where the editor went without one.</returns>
    public static int Run(Stream input, Stream output, TextWriter log, TimeProvider? clock = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(log);
        var lines = TextWriter.Synchronized(log);
        return new Server(input, output, line => Say(lines, line), clock ?? TimeProvider.System).RunAsync().GetAwaiter().GetResult();
    }

    private static void Say(TextWriter log, string line)
    {
        try
        {
            log.WriteLine($"byrelaw language-server: {line}");
        }
        catch (Exception exception) when (exception is IOException or ObjectDisposedException)
        {
            // Nobody reads the log: there is nobody to tell.
        }
    }
}
