using System.Text.Json;
using NodaTime.Text;

namespace Byrelaw.Records.Ledger;

/// <summary>A sheet as a line of the ledger.</summary>
internal static class SheetJson
{
    /// <summary>The line's object, without its seal.</summary>
    /// <param name="number">Its number in the ledger, from 1.</param>
    /// <param name="before">The hash of the line before; null for the first.</param>
    /// <param name="sheet">The sheet.</param>
    public static string Of(int number, string? before, Sheet sheet)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteNumber("number", number);
            json.WriteString("before", before);
            json.WriteString("sheet", sheet.Number);
            json.WriteString("for", LocalDatePattern.Iso.Format(sheet.For));
            json.WriteString("written", LocalDatePattern.Iso.Format(sheet.Written));
            WriteNumber(json, "session", sheet.Session);
            json.WriteString("work", sheet.Work);
            json.WriteString("programme", sheet.Programme);
            if (sheet.Why is not null)
            {
                json.WriteString("why", sheet.Why);
            }

            json.WriteStartArray("replaces");
            foreach (var other in sheet.Replaces)
            {
                json.WriteStringValue(other);
            }

            json.WriteEndArray();
            json.WriteStartArray("rows");
            foreach (var row in sheet.Rows)
            {
                Write(json, row);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>What a line says; null where it is no line of a ledger.</summary>
    public static (int Number, string? Before, Sheet Sheet)? Read(ReadOnlyMemory<byte> line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            var said = document.RootElement;
            return (
                said.GetProperty("number").GetInt32(), said.GetProperty("before").GetString(),
                new Sheet(
                    Text(said, "sheet"), Day(said, "for"), Day(said, "written"), said.GetProperty("session") is { ValueKind: JsonValueKind.Number } session ? session.GetInt32() : null, Text(said, "work"),
                    [.. said.GetProperty("replaces").EnumerateArray().Select(other => other.GetString()!)], [.. said.GetProperty("rows").EnumerateArray().Select(Row)])
                {
                    Programme = said.TryGetProperty("programme", out var programme) ? programme.GetString() : null,
                    Why = said.TryGetProperty("why", out var why) ? why.GetString() : null,
                });
        }
        catch (Exception exception) when (exception is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static void Write(Utf8JsonWriter json, SheetRow row)
    {
        json.WriteStartObject();
        json.WriteNumber("row", row.Row);
        json.WriteString("animal", row.Animal);
        json.WriteString("embryo", row.Embryo);
        if (row.For is { } day)
        {
            json.WriteString("for", LocalDatePattern.Iso.Format(day));
        }

        json.WriteStartArray("writes");
        foreach (var entry in row.Writes)
        {
            json.WriteStartObject();
            json.WriteString("kind", entry.Kind);
            json.WriteString("device", entry.Device);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, int? number)
    {
        if (number is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static SheetRow Row(JsonElement row) => new(
        row.GetProperty("row").GetInt32(), row.GetProperty("animal").GetString(), row.GetProperty("embryo").GetString(),
        [.. row.GetProperty("writes").EnumerateArray().Select(entry => new SheetEntry(Text(entry, "kind"), entry.GetProperty("device").GetString()))])
    {
        For = row.TryGetProperty("for", out _) ? Day(row, "for") : null,
    };

    private static string Text(JsonElement of, string name) => of.GetProperty(name).GetString() ?? throw new FormatException(name);

    private static LocalDate Day(JsonElement of, string name) => LocalDatePattern.Iso.Parse(Text(of, name)) is { Success: true } day ? day.Value : throw new FormatException(name);
}
