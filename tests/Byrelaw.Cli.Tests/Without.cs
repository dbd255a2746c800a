using System.Text.RegularExpressions;

namespace Byrelaw.Cli.Tests;

/// <summary>Takes out of a text what changes with every word of the rules and is read by nobody.</summary>
internal static partial class Without
{
    /// <summary>Each digest becomes <c>sha256:…</c>.</summary>
    public static string Digests(string text) => Digest().Replace(text, "sha256:…");

    [GeneratedRegex("sha256:[0-9a-f]{64}")]
    private static partial Regex Digest();
}
