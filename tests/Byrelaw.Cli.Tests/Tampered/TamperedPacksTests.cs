using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Byrelaw.Workshop.Packing;

namespace Byrelaw.Cli.Tests.Tampered;

/// <summary>What somebody may do to a pack on its way, and what the program says to each: one table, approved.</summary>
public sealed class TamperedPacksTests : IDisposable
{
    private const string Nothing = "Nothing was unpacked.\n";

    private readonly TemporaryFarm _farm = new();
    private readonly StringBuilder _table = new("| what was done to the pack | what `unpack` says |\n| --- | --- |\n");
    private Pack _pack = null!;
    private Pack _signed = null!;

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void What_is_said_to_each_is_as_approved()
    {
        Prepare();
        Bytes();
        Contents();
        Signatures();
        Issues();
        Snapshot.Verify(_table.ToString(), extension: "md");
    }

    private void Prepare()
    {
        _farm.Run("key", "adviser.key").Code.ShouldBe(ExitCode.Done);
        _farm.Run("key", "stranger.key").Code.ShouldBe(ExitCode.Done);
        _farm.Run("pack", "spring.byre", "-o", "bare.pack", "--number", "3").Code.ShouldBe(ExitCode.Done);
        _farm.Run("pack", "spring.byre", "-o", "signed.pack", "--number", "3", "--sign", "adviser.key").Code.ShouldBe(ExitCode.Done);
        _pack = Read("bare.pack");
        _signed = Read("signed.pack");
    }

    /// <summary>Accidents, and changes by somebody who does not make the digests anew.</summary>
    private void Bytes()
    {
        var text = File.ReadAllText(_farm.At("bare.pack"));
        Refused("a number in a rule", Change(text, "at least 56 days", "at least 57 days"));
        Refused("a letter in a reason", Change(text, "about eight weeks", "about night weeks"));
        Refused("every line end made CRLF, as mail programs do", text.Replace("\n", "\r\n", StringComparison.Ordinal));
        Refused("cut in the middle", text[..(text.Length / 2)]);
        Refused("cut before its last line", text[..text.LastIndexOf("end of pack", StringComparison.Ordinal)]);
        Refused("words added below its end", text + "P.S. see you on Tuesday\n");
        Refused("the length of a file", Change(text, " bytes, sha256:", "0 bytes, sha256:"));
        Refused("a length that no file has", Change(text, $"{_pack.Files[0].Bytes.Length} bytes", "99999999999 bytes"));
        Refused("the digest at its end", text[..^3] + "0\n");
        Refused("the fingerprint of the rulebook", Change(text, _pack.Fingerprint, "sha256:" + new string('0', 64)));
        Refused("its first line, to that of packs of before", Change(text, "byrelaw pack 2", "byrelaw pack 1"));
        Refused("its first line, to another kind", Change(text, "byrelaw pack 2", "byrelaw pack 9"));
        Refused("all of it: an empty file", "");
        Refused("all of it: a table of animals", TemporaryFarm.Animals);
        Refused("a number of 0", Change(text, "number 3", "number 0"));
        Refused("a day that no calendar has", Change(text, $"{_pack.Issue}", "packed on 2026-02-30, number 3"));
        Refused("its day and number taken out", Change(text, $"{_pack.Issue}\n", ""));
        Refused("blown up to 17 MiB", text + new string('#', 17 * 1024 * 1024));
    }

    /// <summary>Files that have no place there, by somebody who makes every digest anew.</summary>
    private void Contents()
    {
        foreach (var path in new[]
        {
            "records/events.csv", "judging-log.jsonl", ".bashrc", ".ssh/authorized_keys", ".git/hooks/post-checkout.byre", "rules/.hidden.byre", "../neighbour.byre", "/etc/rules.byre",
            "C:/rules.byre", "rules\\vocabulary.byre", "rules//vocabulary.byre", "VOCABULARY.byre", "spring.byre/more.byre", "con.byre", "lpt1.old.byre", "rules/eryb\u202E.byre", "rules.byre ", "run.sh", "extra.byre",
        })
        {
            Refused($"added: `{path.Replace("\u202E", "(a mark that turns the direction of writing)", StringComparison.Ordinal)}`", With(_pack, path, "event heat\n"));
        }

        Refused("added: `caf\u00e9.byre`, and the same name with an accent of its own", With(With(_pack, "caf\u00e9.byre", "event heat\n"), "cafe\u0301.byre", "event heat\n"));
        Refused("added: 500 files more", _pack with { Files = _pack.Files.AddRange(Enumerable.Range(1, 500).Select(i => new PackedFile($"f{i}.byre", []))) });
        Refused("a used file taken out", _pack with { Files = [.. _pack.Files.Where(file => file.Path != "vocabulary.byre")] });
        Refused("the file that it opens taken out", _pack with { Files = [.. _pack.Files.Where(file => file.Path != "spring.byre")] });
        Refused("a rule, but not the canonical text", Rewritten(_pack, "at least 56 days", "at least 40 days"));
        Refused("the canonical text, but no rule", _pack with { Canonical = _pack.Canonical.Replace("56 days", "40 days", StringComparison.Ordinal) });
        Taken("a rule, and everything else made anew: nobody signed it, so it is another pack", Remade("at least 40 days"));
    }

    private void Signatures()
    {
        Refused("signed: a rule, and everything but the signature made anew", Remade("at least 40 days") with { Signature = _signed.Signature });
        Refused("signed: a remark added to a file, digests made anew", _signed with { Files = _signed.Files.SetItem(0, With(_signed.Files[0], "# take 5 mL\n")) });
        Refused("signed: the number raised", _signed with { Issue = _signed.Issue with { Number = 9 } });
        Refused("signed: the day moved", _signed with { Issue = _signed.Issue with { PackedOn = _signed.Issue.PackedOn.PlusDays(30) } });
        Refused("signed: the program that made it", _signed with { MadeWith = "byrelaw 9.9.9" });
        Refused("signed: another file to open", _signed with { Opens = "recipients.byre" });
        Refused("signed: one bit of the signature", _signed with { Signature = Flipped(_signed.Signature!) });
        Refused("signed: the signature of another pack", _signed with { Signature = PackSigning.Sign(_pack with { Issue = new(_pack.Issue.PackedOn, 1) }, Key("adviser.key")).Signature });
        Refused("signed: the signature cut short", Change(File.ReadAllText(_farm.At("signed.pack")), "==\n", "\n"));
        Refused("signed: the signature taken off, and the adviser's asked for", _pack, "--signed-by", "adviser.key.pub");
        Refused("signed again by a stranger, and the adviser's asked for", PackSigning.Sign(_pack, Key("stranger.key")), "--signed-by", "adviser.key.pub");
        Refused("signed by the adviser, and somebody's private key given to check it by", _signed, "--signed-by", "stranger.key");
        Taken("nothing: signed by the adviser, and the adviser's asked for", _signed, "--signed-by", "adviser.key.pub");
        Taken("signed again by a stranger, and nobody's asked for", PackSigning.Sign(_pack, Key("stranger.key")));
    }

    private void Issues()
    {
        Write("newer.pack", PackSigning.Sign(_pack with { Issue = new(_pack.Issue.PackedOn, 4) }, Key("adviser.key")));
        _farm.Run("unpack", "newer.pack", "season").Code.ShouldBe(ExitCode.Done);
        Row("nothing: an older one, unpacked over a newer", _farm.Run("unpack", "signed.pack", "season"));
        Row("nothing: an older one, unpacked over a newer with `--replace`", _farm.Run("unpack", "signed.pack", "season", "--replace"));
    }

    private void Refused(string what, Pack pack, params string[] more) => Refused(what, PackWriter.Write(pack), more);

    private void Refused(string what, string text) => Refused(what, Encoding.UTF8.GetBytes(text), []);

    private void Refused(string what, byte[] bytes, string[] more)
    {
        var run = Unpack(bytes, more);
        run.Code.ShouldNotBe(ExitCode.Done, what);
        Directory.Exists(_farm.At("there")).ShouldBeFalse(what);
        Row(what, run);
    }

    private void Taken(string what, Pack pack, params string[] more)
    {
        var run = Unpack(PackWriter.Write(pack), more);
        run.Code.ShouldBe(ExitCode.Done, run.Err);
        Row(what, run);
        Directory.Delete(_farm.At("there"), recursive: true);
    }

    private Run Unpack(byte[] bytes, string[] more)
    {
        File.WriteAllBytes(_farm.At("sent.pack"), bytes);
        return _farm.Run(["unpack", "sent.pack", "there", .. more]);
    }

    private void Row(string what, Run run)
    {
        var said = run.Err.Length > 0 ? run.Err.Replace(Nothing, "", StringComparison.Ordinal) : run.Out.Split('\n')[1];
        _table.Append(CultureInfo.InvariantCulture, $"| {what} | {Shown(said)} |\n");
    }

    private string Shown(string said)
    {
        var words = Without.Digests(said).Trim().ReplaceLineEndings(" ").Replace("  help: ", "— ", StringComparison.Ordinal).Replace("|", "\\|", StringComparison.Ordinal);
        foreach (var key in new[] { "adviser", "stranger" })
        {
            words = words.Replace(Convert.ToBase64String(PackSigning.PublicKeyOf(Key(key + ".key"))), $"(the {key}'s)", StringComparison.Ordinal);
        }

        return words;
    }

    private byte[] Key(string file) => KeyFile.ReadPrivate(File.ReadAllText(_farm.At(file)))!;

    private Pack Read(string file) => PackReader.Read(File.ReadAllBytes(_farm.At(file))).Pack!;

    private void Write(string file, Pack pack) => File.WriteAllBytes(_farm.At(file), PackWriter.Write(pack));

    private Pack Remade(string rule)
    {
        var changed = Rewritten(_pack, "at least 56 days", rule);
        return Packer.Pack(changed.Opens, changed.Files, changed.MadeWith, changed.Issue).Pack!;
    }

    private static string Change(string text, string from, string to)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, from);
        return text[..at] + to + text[(at + from.Length)..];
    }

    private static Pack Rewritten(Pack pack, string from, string to) => pack with
    {
        Files = [.. pack.Files.Select(file => file with { Bytes = [.. Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(file.Bytes.AsSpan()).Replace(from, to, StringComparison.Ordinal))] })],
    };

    private static Pack With(Pack pack, string path, string text) => pack with { Files = pack.Files.Add(new PackedFile(path, [.. Encoding.UTF8.GetBytes(text)])) };

    private static PackedFile With(PackedFile file, string more) => file with { Bytes = [.. file.Bytes, .. Encoding.UTF8.GetBytes(more)] };

    private static PackSignature Flipped(PackSignature signature) => signature with { Signature = signature.Signature.SetItem(7, (byte)(signature.Signature[7] ^ 1)) };
}
