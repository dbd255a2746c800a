using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;

namespace Byrelaw.Reporting.Json;

/// <summary>Writes JSON in which nothing is unseen: marks that turn the direction of writing stand there as <c>\u202e</c> and the like (RFC 8259, 7), so
/// that a terminal shows what programs read.</summary>
internal static partial class SeenJson
{
    /// <summary>The text.</summary>
    public static string Of<T>(T value, JsonTypeInfo<T> type) =>
        Unseen().Replace(JsonSerializer.Serialize(value, type), mark => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)mark.Value[0]:x4}"));

    // They stand in strings only, where any sign may be written by its number.
    [GeneratedRegex("[\\u007F-\\u009F\\u061C\\u200E\\u200F\\u2028-\\u202E\\u2066-\\u2069\\uFEFF]")]
    private static partial Regex Unseen();
}
