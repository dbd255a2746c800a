using System.Collections.Immutable;

namespace Byrelaw.Workshop.Tests.Packing;

public sealed class PackTests
{
    private const string Program = "byrelaw 0";

    private static readonly PackIssue Issue = new(new LocalDate(2026, 10, 4), 3);

    private static readonly Gen<string> Name = Gen.OneOf("a", "ä b", "c-d", "vocabulary");

    // Whatever a file holds (also what looks like the pack's own lines) comes back byte for byte.
    private static readonly Gen<byte[]> Content = Gen.OneOf(
        Gen.Byte.Array[0, 60],
        Gen.OneOf<string>("\r\n", "\n", "file \"x\", 3 bytes, ", "end of pack", "# a remark\r\nevent heat", "\uFEFFevent heat\n", "canonical text, 0 bytes").Array[0, 6]
            .Select(parts => Encoding.UTF8.GetBytes(string.Concat(parts))));

    private static readonly Gen<Pack> Packs =
        from names in Gen.Select(Name, Name).Array[1, 4]
        from contents in Content.Array[4]
        let paths = names.Select(pair => $"{pair.Item1}/{pair.Item2}.byre").Distinct().ToList()
        let files = paths.Select((path, i) => new PackedFile(path, [.. contents[i]]))
        select Packer.Pack(paths[0], [.. files.Take(1)], Program, Issue).Pack! with { Files = [.. files.OrderBy(file => file.Path, StringComparer.Ordinal)] };

    [Fact]
    public void What_was_packed_comes_back_byte_for_byte() => Packs.Hold(
        pack =>
        {
            var (read, problem) = PackReader.Read(PackWriter.Write(pack));
            return problem is null
                && read!.Opens == pack.Opens && read.Issue == pack.Issue && read.Fingerprint == pack.Fingerprint
                && read.Files.Zip(pack.Files).All(pair => pair.First.Path == pair.Second.Path && pair.First.Bytes.SequenceEqual(pair.Second.Bytes));
        },
        count: 300);

    [Fact]
    public void A_pack_with_one_byte_changed_is_refused() => Gen.Select(Packs, Gen.Int[0, int.MaxValue], Gen.Byte[1, 255]).Hold(
        (pack, at, change) =>
        {
            var bytes = PackWriter.Write(pack);
            bytes[at % bytes.Length] ^= change;
            return PackReader.Read(bytes).Problem is not null;
        },
        count: 500);

    [Fact]
    public void A_pack_cut_short_is_refused()
    {
        var bytes = PackWriter.Write(OneFile("event heat\n"));
        for (var length = 0; length < bytes.Length; length++)
        {
            PackReader.Read(bytes[..length]).Problem.ShouldNotBeNull();
        }
    }

    [Theory]
    [InlineData("../rules.byre")]
    [InlineData("a/../../rules.byre")]
    [InlineData("/etc/rules.byre")]
    [InlineData("C:/rules.byre")]
    [InlineData("a\\..\\rules.byre")]
    [InlineData("a//rules.byre")]
    [InlineData("./rules.byre")]
    [InlineData("rules.byre ")]
    [InlineData("a./rules.byre")]
    public void A_path_that_may_leave_the_folder_is_refused(string path)
    {
        var pack = OneFile("event heat\n");
        var evil = pack with { Files = [pack.Files[0], new PackedFile(path, [])] };
        PackReader.Read(PackWriter.Write(evil)).Problem!.Found.ShouldContain(path);
    }

    [Fact]
    public void Two_paths_that_are_one_on_some_machines_are_refused()
    {
        var pack = OneFile("event heat\n");
        var evil = pack with { Files = [pack.Files[0], new PackedFile("RULES.byre", [])] };
        PackReader.Read(PackWriter.Write(evil)).Problem!.Found.ShouldContain("stands twice");
    }

    [Fact]
    public void A_pack_that_is_too_large_is_refused() =>
        PackReader.Read(new byte[PackLimits.Bytes + 1]).Problem!.Found.ShouldBe("the pack is larger than 16 MiB");

    [Fact]
    public void Files_that_are_another_rulebook_than_the_pack_says_are_refused()
    {
        var pack = OneFile("event heat\n");
        var other = pack with { Files = [new PackedFile("rules.byre", [.. "event bulling\n"u8])] };
        PackReader.Read(PackWriter.Write(other)).Problem.ShouldBeNull();
        Packer.Check(other, Program)!.Found.ShouldBe("the files of the pack are not the rulebook that it says");
    }

    private static Pack OneFile(string text) =>
        Packer.Pack("rules.byre", ImmutableArray.Create(new PackedFile("rules.byre", [.. Encoding.UTF8.GetBytes(text)])), Program, Issue).Pack!;
}
