using System.Security.Cryptography;
using System.Text;

namespace Byrelaw.Disk;

/// <summary>
/// A line of JSON that ends with <c>,"hash":"sha256:…"}</c>: the SHA-256 of all its bytes before that. Where the hash of the line before stands among those, each line
/// vouches for all above it.
/// </summary>
public static class SealedLine
{
    private const string HashKey = ",\"hash\":\"";
    private const string HashKind = "sha256:";
    private const int HexDigits = 64;
    private const int TailLength = 9 + 7 + HexDigits + 2;

    /// <summary>A line without a line end, and its hash.</summary>
    /// <param name="json">An object that says something.</param>
    public static (string Line, string Hash) Seal(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var body = json[..^1];
        var hash = HashOf(Encoding.UTF8.GetBytes(body));
        return ($"{body}{HashKey}{hash}\"}}", hash);
    }

    /// <summary>The hash that stands on a line, right or not; null where it ends with none.</summary>
    public static string? HashOn(ReadOnlySpan<byte> line)
    {
        if (line.Length <= TailLength)
        {
            return null;
        }

        var text = Encoding.Latin1.GetString(line[^TailLength..]);
        var hash = text[HashKey.Length..^2];
        return text.StartsWith(HashKey, StringComparison.Ordinal) && text.EndsWith("\"}", StringComparison.Ordinal)
            && hash.StartsWith(HashKind, StringComparison.Ordinal) && hash[HashKind.Length..].All(char.IsAsciiHexDigitLower) ? hash : null;
    }

    /// <summary>Whether the hash on a line is that of what stands before it.</summary>
    public static bool Holds(ReadOnlySpan<byte> line) => HashOn(line) is { } hash && HashOf(line[..^TailLength]) == hash;

    private static string HashOf(ReadOnlySpan<byte> bytes) => HashKind + Convert.ToHexStringLower(SHA256.HashData(bytes));
}
