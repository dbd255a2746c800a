using System.Buffers;
using System.IO.Pipelines;

namespace Byrelaw.LanguageServer.Wire;

/// <summary>Cuts a stream into messages: each has a header that says how long it is, an empty line, and a body.</summary>
internal sealed class MessageReader(Stream stream, Action<string> log)
{
    private const int MostHeader = 4096;
    private const int MostBody = 64_000_000;
    private const string Length = "Content-Length:";

    private readonly PipeReader _pipe = PipeReader.Create(stream);

    /// <summary>The next message's body; null at the end of the stream. Headers without a length are passed over.</summary>
    public async Task<byte[]?> ReadAsync()
    {
        while (await ReadHeaderAsync() is { } header)
        {
            if (LengthIn(header) is { } length)
            {
                return await ReadBodyAsync(length);
            }

            log($"a message without a usable {Length} header was passed over");
        }

        return null;
    }

    /// <summary>Everything up to an empty line, which may be long where it is no header at all; null at the end.</summary>
    private async Task<string?> ReadHeaderAsync()
    {
        while (true)
        {
            var read = await _pipe.ReadAsync();
            var reader = new SequenceReader<byte>(read.Buffer);
            if (reader.TryReadTo(out ReadOnlySequence<byte> header, "\r\n\r\n"u8))
            {
                var text = header.Length > MostHeader ? "" : Encoding.ASCII.GetString(header);
                _pipe.AdvanceTo(reader.Position);
                return text;
            }

            if (read.IsCompleted)
            {
                return null;
            }

            // What is no header is thrown away piece by piece; three bytes may be the start of the empty line.
            _pipe.AdvanceTo(read.Buffer.Length > MostHeader ? read.Buffer.GetPosition(read.Buffer.Length - 3) : read.Buffer.Start, read.Buffer.End);
        }
    }

    private async Task<byte[]?> ReadBodyAsync(int length)
    {
        var read = await _pipe.ReadAtLeastAsync(length);
        if (read.Buffer.Length < length)
        {
            return null;
        }

        var body = read.Buffer.Slice(0, length).ToArray();
        _pipe.AdvanceTo(read.Buffer.GetPosition(length));
        return body;
    }

    private static int? LengthIn(string header)
    {
        foreach (var line in header.Split("\r\n"))
        {
            if (line.StartsWith(Length, StringComparison.OrdinalIgnoreCase) && int.TryParse(line[Length.Length..], out var length))
            {
                return length is >= 0 and <= MostBody ? length : null;
            }
        }

        return null;
    }
}
