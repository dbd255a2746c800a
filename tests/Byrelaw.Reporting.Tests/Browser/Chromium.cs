using System.Diagnostics;

namespace Byrelaw.Reporting.Tests.Browser;

/// <summary>A real browser, where this machine has one.</summary>
internal static class Chromium
{
    /// <summary>A page is there in a second or two; a browser that hangs is not to hang the tests.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    /// <summary>What systems call it.</summary>
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    /// <summary>Its program; null where there is none.</summary>
    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Where(folder => folder.Length > 0)
        .SelectMany(folder => Names.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists);

    /// <summary>A page as it stands after its scripts have run.</summary>
    /// <param name="file">The page; it may look into other pages of its folder.</param>
    /// <param name="profile">A folder of its own for what the browser keeps.</param>
    public static string After(string file, string profile)
    {
        var start = new ProcessStartInfo(Program!) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in new[] { "--headless=new", "--no-sandbox", "--disable-gpu", "--allow-file-access-from-files", $"--user-data-dir={profile}", "--virtual-time-budget=4000", "--dump-dom", new Uri(file).AbsoluteUri })
        {
            start.ArgumentList.Add(argument);
        }

        using var browser = Process.Start(start)!;
        _ = browser.StandardError.ReadToEndAsync();
        var page = browser.StandardOutput.ReadToEndAsync();
        if (!browser.WaitForExit(Longest))
        {
            browser.Kill(entireProcessTree: true);
            throw new TimeoutException($"the browser was not done with {file} after {Longest.TotalSeconds:0} seconds");
        }

        return page.GetAwaiter().GetResult();
    }
}
