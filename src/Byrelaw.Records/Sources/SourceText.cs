using System.Text.Unicode;

namespace Byrelaw.Records.Sources;

/// <summary>The bytes of a source as text: where they are unpacked, and which letters they stand for.</summary>
internal static class SourceText
{
    // Windows' own letters are not among those that .NET knows by itself.
    static SourceText() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>The text; null where the bytes are none in these letters, break off where they are packed, or are too many.</summary>
    /// <param name="bytes">As they stand on disk.</param>
    /// <param name="letters">What the farm says of them; null for nothing.</param>
    /// <param name="most">The most bytes that are read, unpacked.</param>
    /// <param name="isTooLarge">Whether there are more.</param>
    public static string? Of(byte[] bytes, string? letters, long most, out bool isTooLarge)
    {
        isTooLarge = bytes.Length > most;
        if (!isTooLarge && GzipFile.Is(bytes))
        {
            if (GzipFile.Unpacked(bytes, most, out isTooLarge) is not { } unpacked)
            {
                return null;
            }

            bytes = unpacked;
        }

        if (isTooLarge)
        {
            return null;
        }

        return ByMark(bytes) ?? (letters is null || NameFolding.Fold(letters) == "utf-8"
            ? Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes) : null
            : Encoding.GetEncoding(NameFolding.Fold(letters) switch { "latin-1" => "iso-8859-1", var name => name }).GetString(bytes));
    }

    /// <summary>The text where a mark at its start leaves one reading.</summary>
    private static string? ByMark(byte[] bytes) => bytes switch
    {
        [0xEF, 0xBB, 0xBF, ..] => Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes.AsSpan(3)) : null,
        [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes.AsSpan(2)),
        [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes.AsSpan(2)),
        _ => null,
    };
}
