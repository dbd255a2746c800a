using System.Text.Json;

namespace Byrelaw.Records.Ade;

/// <summary>One message of the exchange.</summary>
/// <param name="Number">Its place in its file, from 1.</param>
/// <param name="Type">What it is, such as <c>Insemination</c>; empty where neither it nor its file says so.</param>
/// <param name="Body">What it says.</param>
internal sealed record AdeResource(int Number, string Type, JsonElement Body)
{
    /// <summary>A text at a path such as <c>animal.id</c>; empty where there is none.</summary>
    public string Text(params ReadOnlySpan<string> path)
    {
        var at = Body;
        foreach (var name in path)
        {
            if (at.ValueKind != JsonValueKind.Object || !at.TryGetProperty(name, out at))
            {
                return "";
            }
        }

        return at.ValueKind switch { JsonValueKind.String => at.GetString()!.Trim(), JsonValueKind.Number => at.GetRawText(), _ => "" };
    }

    /// <summary>Whether its sender has withdrawn it.</summary>
    public bool IsDeleted => IsTrue("isDeleted") || (Body.TryGetProperty("meta", out var meta) && meta.ValueKind == JsonValueKind.Object && meta.TryGetProperty("isDeleted", out var deleted) && deleted.ValueKind == JsonValueKind.True);

    /// <summary>Who sent it; empty where that is not said.</summary>
    public string Sender => Text("meta", "source");

    /// <summary>When its sender last changed it; null where that is not said.</summary>
    public DateTimeOffset? Modified => DateTimeOffset.TryParse(Text("meta", "modified"), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at) ? at : null;

    private bool IsTrue(string name) => Body.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.True;
}
