using System.Security.Cryptography;

namespace Byrelaw.Reporting.Tests.Log;

/// <summary>What the chain of hashes shows, and what it cannot show.</summary>
public sealed class ChainTests : IDisposable
{
    private const int Judgings = 6;
    private readonly SomeLog _log = new(Judgings);

    public void Dispose() => _log.Dispose();

    [Fact]
    public void A_log_as_it_was_written_has_no_problems()
    {
        var check = LogCheck.Of(_log.Bytes, "log");
        check.Problems.ShouldBeEmpty();
        check.Entries.Select(entry => entry.Number).ShouldBe([1, 2, 3, 4, 5, 6]);
    }

    /// <summary>Held to the definition in docs/log.md by other means than the program's own.</summary>
    [Fact]
    public void Each_hash_is_that_of_the_line_up_to_it_and_stands_on_the_next()
    {
        var before = "null";
        foreach (var line in _log.Lines)
        {
            var parts = line.Split(",\"hash\":");
            parts.Length.ShouldBe(2);
            var hash = $"\"sha256:{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(parts[0])))}\"";
            parts[1].ShouldBe(hash + "}");
            parts[0].ShouldEndWith($",\"before\":{before}");
            before = hash;
        }
    }

    [Fact]
    public void Any_byte_changed_is_found()
    {
        var bytes = _log.Bytes;
        for (var at = 0; at < bytes.Length; at++)
        {
            foreach (var other in new[] { (byte)(bytes[at] ^ 1), (byte)(bytes[at] ^ 0x20), (byte)'\n', (byte)' ' }.Where(other => other != bytes[at]))
            {
                var changed = (byte[])bytes.Clone();
                changed[at] = other;
                SomeLog.Codes(changed).ShouldNotBeEmpty($"byte {at} became {other}");
            }
        }
    }

    [Fact]
    public void Random_bytes_changed_are_found() =>
        Gen.Select(Gen.Int[0, _log.Bytes.Length - 1], Gen.Byte).Array[1, 5].Hold(changes =>
        {
            var bytes = _log.Bytes;
            var changed = (byte[])bytes.Clone();
            foreach (var (at, to) in changes)
            {
                changed[at] = to;
            }

            if (!changed.AsSpan().SequenceEqual(bytes))
            {
                SomeLog.Codes(changed).ShouldNotBeEmpty();
            }
        }, count: 500, oneByOne: true);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(Judgings - 1)]
    public void A_line_that_is_taken_out_is_missed(int number) =>
        SomeLog.Codes(_log.Lines.Where((_, place) => place != number - 1)).ShouldBe(["L0102"]);

    [Fact]
    public void Lines_that_change_places_are_named_and_none_is_called_missing()
    {
        for (var one = 0; one < Judgings; one++)
        {
            for (var other = one + 1; other < Judgings; other++)
            {
                var lines = _log.Lines;
                (lines[one], lines[other]) = (lines[other], lines[one]);
                SomeLog.Codes(lines).Distinct().ShouldBe(["L0103"]);
            }
        }
    }

    [Fact]
    public void A_line_that_is_copied_in_again_is_found() => SomeLog.Codes(_log.Lines.Append(_log.Lines[2])).ShouldBe(["L0103"]);

    [Fact]
    public void A_line_written_anew_with_a_hash_of_its_own_is_found_by_the_next()
    {
        using var other = new SomeLog();
        other.Append("somebody else");
        SomeLog.Codes([other.Lines[0], .. _log.Lines.Skip(1)]).ShouldBe(["L0101"]);
    }

    [Fact]
    public void A_cut_at_the_end_is_found_only_by_a_hash_that_was_kept()
    {
        var hash = LogCheck.Of(_log.Bytes, "log").LastHash!;
        for (var left = 0; left < Judgings; left++)
        {
            SomeLog.Codes(_log.Lines.Take(left)).ShouldBeEmpty();
            SomeLog.Codes(_log.Lines.Take(left), hash).ShouldBe(["L0106"]);
        }

        SomeLog.Codes(_log.Bytes, hash).ShouldBeEmpty();
        SomeLog.Codes(_log.Bytes, hash["sha256:".Length..]).ShouldBeEmpty();
    }

    [Fact]
    public void A_log_written_wholly_anew_is_found_only_by_a_hash_that_was_kept()
    {
        using var anew = new SomeLog(Judgings, "somebody else");
        SomeLog.Codes(anew.Bytes).ShouldBeEmpty();
        SomeLog.Codes(anew.Bytes, LogCheck.Of(_log.Bytes, "log").LastHash).ShouldBe(["L0106"]);
    }

    [Fact]
    public void A_note_in_the_log_is_none_of_its_lines() => SomeLog.Codes([.. _log.Lines.Take(3), "vet came", .. _log.Lines.Skip(3)]).ShouldBe(["L0105"]);

    [Fact]
    public void Bytes_that_are_no_log_bring_nothing_down() =>
        Gen.Byte.Array[0, 300].Hold(bytes => LogCheck.Of(bytes, "log").Entries.ShouldBeEmpty(), count: 300, oneByOne: true);
}
