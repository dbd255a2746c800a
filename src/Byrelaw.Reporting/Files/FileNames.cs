using System.Runtime.InteropServices;
using System.Security.Cryptography;

namespace Byrelaw.Reporting.Files;

/// <summary>
/// File names for names that people gave: safe on every common file system, and no two alike,
/// not even where capitals are taken for small letters.
/// </summary>
public sealed class FileNames
{
    private const int Longest = 48;

    private static readonly HashSet<string> Reserved = new(
        [
            "con", "prn", "aux", "nul", "conin$", "conout$", "clock$", "index",
            .. Enumerable.Range(0, 10).SelectMany(i => new[] { $"com{i}", $"lpt{i}" }),
        ], StringComparer.OrdinalIgnoreCase);

    private readonly HashSet<string> _taken = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> _given = new(StringComparer.Ordinal);

    /// <summary>The file name for a name, without an ending; the same each time it is asked for.</summary>
    public string For(string name)
    {
        if (_given.TryGetValue(name, out var given))
        {
            return given;
        }

        var safe = Safe(name);
        var file = safe == name && !Reserved.Contains(safe) ? safe : $"{safe}-{Digest(name)}";
        for (var i = 2; !_taken.Add(file); i++)
        {
            file = string.Create(CultureInfo.InvariantCulture, $"{safe}-{Digest(name)}-{i}");
        }

        return _given[name] = file;
    }

    /// <summary>ASCII letters, digits and single hyphens; everything else becomes a hyphen.</summary>
    private static string Safe(string name)
    {
        var text = new StringBuilder();
        foreach (var c in name)
        {
            var kept = char.IsAsciiLetterOrDigit(c) ? c : '-';
            if (text.Length < Longest && (kept != '-' || (text.Length > 0 && text[^1] != '-')))
            {
                text.Append(kept);
            }
        }

        var safe = text.ToString().TrimEnd('-');
        return safe.Length == 0 ? "animal" : safe;
    }

    private static string Digest(string name) =>
        Convert.ToHexStringLower(SHA256.HashData(MemoryMarshal.AsBytes(name.AsSpan())))[..8];
}
