using System.Text.Json;
using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Ade;

/// <summary>Reads the messages of one file: a collection (<c>member</c>), a list, or one message by itself. Nothing deeper than 32 levels or with a text longer than 64 kB is read.</summary>
internal static class AdeFile
{
    private const int Deepest = 32;
    private const int LongestText = 64 << 10;

    /// <summary>The messages; null where the file cannot be read.</summary>
    /// <param name="name">Its name, which may say what its messages are.</param>
    /// <param name="file">UTF-8, or what its own mark says; packed by gzip or not.</param>
    /// <param name="page">Which page of how many it is: 1 of 1 where it does not say, 0 of several where it does not say which.</param>
    public static IReadOnlyList<AdeResource>? Read(string name, byte[] file, out (int Number, int Of) page)
    {
        page = (1, 1);
        if (SourceText.Of(file, null, SourceReader.MostBytes, out _) is not { } text)
        {
            return null;
        }

        var bytes = Encoding.UTF8.GetBytes(text);
        try
        {
            if (HasLongText(bytes))
            {
                return null;
            }

            // Of a name that stands twice in a message nobody can tell which value is meant.
            using var document = JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = Deepest, AllowDuplicateProperties = false });
            page = Page(document.RootElement);
            return Resources(name, document.RootElement);
        }
        catch (JsonException)
        {
            return null;
        }
        catch (InvalidOperationException)
        {
            // A text with half a letter in it, which is found only when it is asked for.
            return null;
        }
    }

    private static (int Number, int Of) Page(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("view", out var view) || view.ValueKind != JsonValueKind.Object)
        {
            return (1, 1);
        }

        var pages = Math.Max(1, Number("totalPages"));
        return pages == 1 ? (1, 1) : (Number("currentPage"), pages);

        int Number(string name) => view.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) ? number : 0;
    }

    private static bool HasLongText(ReadOnlySpan<byte> json)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = Deepest });
        while (reader.Read())
        {
            if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName)
            {
                if (reader.ValueSpan.Length > LongestText)
                {
                    return true;
                }

                // Half a letter is no text.
                _ = reader.GetString();
            }
        }

        return false;
    }

    private static List<AdeResource>? Resources(string name, JsonElement root)
    {
        var named = AdeTypes.Named(FileName(name));
        var members = root.ValueKind == JsonValueKind.Array ? root
            : root.ValueKind == JsonValueKind.Object && root.TryGetProperty("member", out var member) && member.ValueKind == JsonValueKind.Array && !IsSet(root) ? member
            : root;
        if (members.ValueKind == JsonValueKind.Object)
        {
            return [new AdeResource(1, TypeOf(members, named), members.Clone())];
        }

        if (members.ValueKind != JsonValueKind.Array)
        {
            return null;
        }

        var all = new List<AdeResource>();
        foreach (var element in members.EnumerateArray())
        {
            if (element.ValueKind != JsonValueKind.Object)
            {
                return null;
            }

            all.Add(new AdeResource(all.Count + 1, TypeOf(element, named), element.Clone()));
        }

        return all;
    }

    /// <summary>What a message is: by what it says itself, by what only such a message has, else by its file's name.</summary>
    private static string TypeOf(JsonElement resource, string named)
    {
        var said = resource.TryGetProperty("resourceType", out var type) && type.ValueKind == JsonValueKind.String ? type.GetString()! : "";
        return said.Length > 0 ? AdeTypes.Said(said)
            : resource.TryGetProperty("inseminationType", out _) ? "Insemination"
            : resource.TryGetProperty("animalSetId", out _) && named.StartsWith("AnimalSet", StringComparison.Ordinal) ? named
            : resource.TryGetProperty("calvingEase", out _) || resource.TryGetProperty("progenyDetails", out _) ? "Parturition"
            : resource.TryGetProperty("departureKind", out _) ? "Departure"
            : resource.TryGetProperty("arrivalReason", out _) ? "Arrival"
            : resource.TryGetProperty("identifier", out _) && resource.TryGetProperty("gender", out _) ? "AnimalCore"
            : named;
    }

    /// <summary>A set has members too, which are no messages.</summary>
    private static bool IsSet(JsonElement root) => root.TryGetProperty("purpose", out _) || (root.TryGetProperty("resourceType", out var type) && type.ValueKind == JsonValueKind.String && AdeTypes.Said(type.GetString()!) == "AnimalSet");

    private static string FileName(string name) => name[(name.LastIndexOf('/') + 1)..];
}
