using System.Buffers;
using System.Text.Json.Serialization.Metadata;

namespace Byrelaw.LanguageServer.Wire;

/// <summary>Writes messages, one at a time, whoever calls.</summary>
internal sealed class MessageWriter(Stream stream)
{
    private readonly Lock _lock = new();
    private int _nextId;

    /// <summary>Answers a request.</summary>
    public void Result<T>(JsonElement id, T result, JsonTypeInfo<T> type) => Write(writer =>
    {
        writer.WritePropertyName("id");
        id.WriteTo(writer);
        writer.WritePropertyName("result");
        JsonSerializer.Serialize(writer, result, type);
    });

    /// <summary>Refuses a request.</summary>
    /// <param name="id">Its id; null where it could not be read.</param>
    /// <param name="error">Why.</param>
    public void Error(JsonElement? id, RequestException error) => Write(writer =>
    {
        writer.WritePropertyName("id");
        if (id is { } known)
        {
            known.WriteTo(writer);
        }
        else
        {
            writer.WriteNullValue();
        }

        writer.WriteStartObject("error");
        writer.WriteNumber("code", (int)error.Code);
        writer.WriteString("message", error.Message);
        writer.WriteEndObject();
    });

    /// <summary>Tells the client something.</summary>
    public void Notify<T>(string method, T parameters, JsonTypeInfo<T> type) => Write(writer => Call(writer, method, parameters, type));

    /// <summary>Asks the client for something; its answer is of no interest.</summary>
    public void Request<T>(string method, T parameters, JsonTypeInfo<T> type) => Write(writer =>
    {
        writer.WriteString("id", $"byrelaw-{Interlocked.Increment(ref _nextId)}");
        Call(writer, method, parameters, type);
    });

    private static void Call<T>(Utf8JsonWriter writer, string method, T parameters, JsonTypeInfo<T> type)
    {
        writer.WriteString("method", method);
        writer.WritePropertyName("params");
        JsonSerializer.Serialize(writer, parameters, type);
    }

    private void Write(Action<Utf8JsonWriter> content)
    {
        var body = new ArrayBufferWriter<byte>(1024);
        using (var writer = new Utf8JsonWriter(body))
        {
            writer.WriteStartObject();
            writer.WriteString("jsonrpc", "2.0");
            content(writer);
            writer.WriteEndObject();
        }

        lock (_lock)
        {
            stream.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"Content-Length: {body.WrittenCount}\r\n\r\n")));
            stream.Write(body.WrittenSpan);
            stream.Flush();
        }
    }
}
