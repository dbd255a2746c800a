namespace Byrelaw.Workshop.Packing;

/// <summary>Reads a pack and refuses one that is not just as it was written.</summary>
public static class PackReader
{
    private const string Changed = "it was changed on its way; ask for it again, as an attached file and not as text in a message";

    /// <summary>Reads; nothing is believed that its own digests do not bear out.</summary>
    /// <returns>The pack, or why it is refused.</returns>
    public static (Pack? Pack, PackProblem? Problem) Read(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (bytes.Length > PackLimits.Bytes)
        {
            return (null, new PackProblem(0, $"the pack is larger than {PackLimits.Bytes / 1024 / 1024} MiB", "no programme needs as much; ask where it comes from"));
        }

        try
        {
            return (new PackParts(bytes).Read(), null);
        }
        catch (PackFault fault)
        {
            return (null, new PackProblem(fault.Line, fault.Message, fault.Mend ?? Changed));
        }
    }

    /// <summary>What stops the reading of a pack; it never leaves this file.</summary>
    private sealed class PackFault(int line, string message, string? mend = null) : Exception(message)
    {
        public int Line { get; } = line;

        public string? Mend { get; } = mend;
    }

    private ref struct PackParts(ReadOnlySpan<byte> bytes)
    {
        private readonly ReadOnlySpan<byte> _bytes = bytes;
        private int _at;
        private int _line;

        public Pack Read()
        {
            if (NextLine() is var first && first != PackManifest.FirstLine)
            {
                throw first == PackManifest.FirstLine + "\r" ? new PackFault(1, "its line ends are not as they were written")
                    : first == "byrelaw pack 1"
                    ? new PackFault(1, "this pack is of the first kind, whose signatures cover the rules and not the files", "ask for it to be packed again with this version of the program")
                    : new PackFault(1, $"this is not a pack: its first line is not `{PackManifest.FirstLine}`", "give a file that `byrelaw pack` has written");
            }

            var madeWith = InQuotes(NextLine(), "made with ");
            var issue = PackIssue.Read(NextLine()) ?? throw NotAsWritten();
            var opens = InQuotes(NextLine(), "opens ");
            var fingerprint = After(NextLine(), "rulebook ");
            var line = NextLine();
            var signature = line.StartsWith("signed ", StringComparison.Ordinal) ? Signature(line) : null;
            if (signature is not null)
            {
                line = NextLine();
            }

            var files = ImmutableArray.CreateBuilder<PackedFile>();
            while (true)
            {
                Expect(line, "");
                var head = NextLine();
                if (head.StartsWith("canonical text, ", StringComparison.Ordinal))
                {
                    var canonical = Encoding.UTF8.GetString(Content(head["canonical text, ".Length..]));
                    var digest = PackManifest.Digest(_bytes[.._at]);
                    if (After(NextLine(), PackWriter.LastLine) != digest)
                    {
                        throw new PackFault(_line, "the pack as a whole is not what was packed: its SHA-256 is another");
                    }

                    return Finished(new Pack(madeWith, issue, opens, fingerprint, canonical, files.ToImmutable(), signature));
                }

                files.Add(File(head, files));
                line = NextLine();
            }
        }

        private readonly Pack Finished(Pack pack)
        {
            if (_at != _bytes.Length)
            {
                throw new PackFault(_line + 1, "something follows the end of the pack");
            }

            if (PackManifest.Digest(Encoding.UTF8.GetBytes(pack.Canonical)) != pack.Fingerprint)
            {
                throw new PackFault(5, "the fingerprint is not that of the canonical text");
            }

            return pack.Files.Any(file => file.Path == pack.Opens) ? pack : throw new PackFault(4, $"the pack does not hold the file that it opens, `{pack.Opens}`");
        }

        private PackedFile File(string head, ImmutableArray<PackedFile>.Builder earlier)
        {
            var rest = After(head, "file \"");
            var end = rest.IndexOf("\", ", StringComparison.Ordinal);
            if (end < 0)
            {
                throw NotAsWritten();
            }

            var path = rest[..end];
            if (PackPath.Fault(path) is { } fault)
            {
                throw new PackFault(_line, $"the path `{path}` {fault}", "do not unpack it; ask where it comes from");
            }

            if (earlier.Any(file => Clash(file.Path, path)))
            {
                throw new PackFault(_line, $"the path `{path}` stands twice, or names a folder as well as a file", "do not unpack it; ask where it comes from");
            }

            if (earlier.Count == PackLimits.Files)
            {
                throw new PackFault(_line, $"the pack holds more than {PackLimits.Files} files", "no programme needs as many; ask where it comes from");
            }

            return new PackedFile(path, [.. Content(rest[(end + 3)..])]);
        }

        /// <summary>Whether two paths cannot lie side by side on every machine: some take no notice of capitals, or of how an accent is written.</summary>
        private static bool Clash(string one, string other)
        {
            (one, other) = (ComposedText.Of(one), ComposedText.Of(other));
            return string.Equals(one, other, StringComparison.OrdinalIgnoreCase)
                || one.StartsWith(other + "/", StringComparison.OrdinalIgnoreCase) || other.StartsWith(one + "/", StringComparison.OrdinalIgnoreCase);
        }

        private ReadOnlySpan<byte> Content(string said)
        {
            var end = said.IndexOf(" bytes, ", StringComparison.Ordinal);
            if (end < 0 || !int.TryParse(said.AsSpan(0, end), System.Globalization.NumberStyles.None, null, out var length) || length > _bytes.Length - _at)
            {
                throw NotAsWritten();
            }

            var content = _bytes.Slice(_at, length);
            if (PackManifest.Digest(content) != said[(end + " bytes, ".Length)..])
            {
                throw new PackFault(_line, "what follows is not what was packed: its SHA-256 is another");
            }

            _at += length;
            _line += content.Count((byte)'\n');
            Expect(NextLine(), "");
            return content;
        }

        private readonly PackSignature Signature(string line)
        {
            var parts = line.Split(' ');
            Span<byte> key = stackalloc byte[33];
            Span<byte> signature = stackalloc byte[66];
            return parts.Length == 4 && parts[1] == "ed25519"
                && Convert.TryFromBase64String(parts[2], key, out var keyLength) && keyLength == 32
                && Convert.TryFromBase64String(parts[3], signature, out var length) && length == 64
                ? new PackSignature([.. key[..32]], [.. signature[..64]])
                : throw new PackFault(_line, "the signature cannot be read");
        }

        private string NextLine()
        {
            _line++;
            var length = _bytes[_at..].IndexOf((byte)'\n');
            if (length is < 0 or > 1000)
            {
                throw length < 0 ? new PackFault(_line, "the pack ends too early") : NotAsWritten();
            }

            var line = Encoding.UTF8.GetString(_bytes.Slice(_at, length));
            _at += length + 1;
            return line;
        }

        private readonly string InQuotes(string line, string head)
        {
            var rest = After(line, head);
            return rest.Length >= 2 && rest[0] == '"' && rest[^1] == '"' ? rest[1..^1] : throw NotAsWritten();
        }

        private readonly string After(string line, string head) =>
            line.StartsWith(head, StringComparison.Ordinal) ? line[head.Length..] : throw NotAsWritten();

        private readonly void Expect(string line, string wanted)
        {
            if (line != wanted)
            {
                throw NotAsWritten();
            }
        }

        private readonly PackFault NotAsWritten() => new(_line, "this line is not as a pack has it");
    }
}
