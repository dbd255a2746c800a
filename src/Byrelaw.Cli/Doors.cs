using Microsoft.Win32.SafeHandles;

namespace Byrelaw.Cli;

/// <summary>Where the program writes to and works in: the real terminal, or a test's.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Err">Problems and progress.</param>
/// <param name="Here">The folder that relative paths start from.</param>
/// <param name="OutInk">How answers are set off.</param>
/// <param name="ErrInk">How problems are set off.</param>
/// <param name="ShowsProgress">Whether someone watches <paramref name="Err"/>.</param>
public sealed record Doors(TextWriter Out, TextWriter Err, string Here, Ink OutInk, Ink ErrInk, bool ShowsProgress)
{
    /// <summary>Opens what is given to the program to read; nothing unless someone says so.</summary>
    public Func<Stream> In { get; init; } = () => Stream.Null;

    /// <summary>What the time is, for the log of judging, and for what day it is.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>What day it is here: agreements after it are not in force yet, and no records reach further.</summary>
    public LocalDate Today => LocalDate.FromDateTime(Clock.GetLocalNow().Date);

    /// <summary>Waits for Ctrl-C: what it gives is cancelled by it, until it is disposed of.</summary>
    public Func<Interruption> Interruptions { get; init; } = () => new Interruption(ofTheProcess: false);

    /// <summary>Whether judgings are logged; not where tests judge the repository's own examples.</summary>
    public bool KeepsLog { get; init; } = true;

    /// <summary>Whether rows of the records that cannot be read make the answer a bad one; they are told in any case.</summary>
    public bool IsStrict { get; init; }

    /// <summary>Plain text into two writers, as for a pipe.</summary>
    public static Doors Plain(TextWriter @out, TextWriter err, string here) => new(@out, err, here, Ink.Plain, Ink.Plain, ShowsProgress: false);

    /// <summary>The process's own.</summary>
    public static Doors OfTheProcess()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var wantsColour = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb";
        if (OperatingSystem.IsWindows())
        {
            Console.OutputEncoding = utf8;
        }

        return new Doors(
            new StreamWriter(StandardOutput(), utf8, bufferSize: 16384) { NewLine = "\n" }, Console.Error, Directory.GetCurrentDirectory(),
            new Ink(wantsColour && !Console.IsOutputRedirected), new Ink(wantsColour && !Console.IsErrorRedirected),
            ShowsProgress: !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb")
        { In = Console.OpenStandardInput, Interruptions = () => new Interruption(ofTheProcess: true) };
    }

    /// <summary>The console's own stream, except for a pipe: there it hides that nobody reads any more.</summary>
    private static Stream StandardOutput()
    {
        if (!OperatingSystem.IsWindows() && Console.IsOutputRedirected)
        {
            var stream = new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write, bufferSize: 0);
            if (!stream.CanSeek)
            {
                return stream;
            }
        }

        return Console.OpenStandardOutput();
    }

    /// <summary>The folder that relative paths start from.</summary>
    public WorkFolder Folder { get; } = new(Here);

    /// <inheritdoc cref="WorkFolder.Full"/>
    public string Full(string path) => Folder.Full(path);

    /// <inheritdoc cref="WorkFolder.Show"/>
    public string Show(string path) => Folder.Show(path);
}
