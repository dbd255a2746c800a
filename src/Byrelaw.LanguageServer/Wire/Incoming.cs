namespace Byrelaw.LanguageServer.Wire;

/// <summary>One message from the client.</summary>
/// <param name="Method">What is asked or told; null for an answer to something that the server asked.</param>
/// <param name="Id">Null for something that is only told.</param>
/// <param name="Parameters">Undefined where there are none.</param>
internal sealed record Incoming(string? Method, JsonElement? Id, JsonElement Parameters)
{
    /// <summary>A message that asks and tells nothing.</summary>
    public static readonly Incoming Nothing = new(null, null, default);

    /// <summary>Reads a message's body.</summary>
    /// <exception cref="RequestException">It is no JSON, or no message.</exception>
    public static Incoming Parse(byte[] body)
    {
        JsonElement message;
        try
        {
            using var document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = 64 });
            message = document.RootElement.Clone();
        }
        catch (JsonException exception)
        {
            throw new RequestException(ErrorCode.ParseError, $"not JSON: {exception.Message}");
        }

        if (message.ValueKind != JsonValueKind.Object)
        {
            throw new RequestException(ErrorCode.InvalidRequest, "a message is one JSON object");
        }

        var id = message.TryGetProperty("id", out var found) && found.ValueKind is JsonValueKind.Number or JsonValueKind.String ? found : (JsonElement?)null;
        var parameters = message.TryGetProperty("params", out var given) ? given : default;
        if (message.TryGetProperty("method", out var method) && method.ValueKind == JsonValueKind.String)
        {
            return new Incoming(method.GetString(), id, parameters);
        }

        return message.TryGetProperty("result", out _) || message.TryGetProperty("error", out _)
            ? new Incoming(null, id, parameters)
            : throw new RequestException(ErrorCode.InvalidRequest, "a message has a method");
    }
}
