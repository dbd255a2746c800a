namespace Byrelaw.Workshop.Tests.Packing;

public sealed class SigningTests
{
    private static readonly Pack Pack =
        Packer.Pack("rules.byre", [new PackedFile("rules.byre", [.. "event heat\n"u8])], "byrelaw 0", new PackIssue(new LocalDate(2026, 10, 4), 3)).Pack!;

    // RFC 8032, section 7.1, TEST 1: secret key and public key.
    [Fact]
    public void A_public_key_is_the_one_that_the_standard_gives() => Convert.ToHexStringLower(
        PackSigning.PublicKeyOf(Convert.FromHexString("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")))
        .ShouldBe("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");

    // RFC 8032, section 7.1, TEST 1: the signature of the empty message.
    [Fact]
    public void A_signature_is_the_one_that_the_standard_gives() => Convert.ToHexStringLower(PackSigning.Sign(
            [], Convert.FromHexString("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")))
        .ShouldBe("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
            + "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b");

    [Fact]
    public void A_signed_pack_is_genuine_after_its_journey_and_not_after_a_change()
    {
        var signed = PackReader.Read(PackWriter.Write(PackSigning.Sign(Pack, PackSigning.NewPrivateKey()))).Pack!;
        PackSigning.IsGenuine(signed).ShouldBeTrue();
        PackSigning.IsGenuine(signed with { Canonical = signed.Canonical + " " }).ShouldBeFalse();
        PackSigning.IsGenuine(signed with { MadeWith = "byrelaw 1" }).ShouldBeFalse();
        PackSigning.IsGenuine(signed with { Issue = signed.Issue with { Number = 4 } }).ShouldBeFalse();
        PackSigning.IsGenuine(signed with { Issue = signed.Issue with { PackedOn = signed.Issue.PackedOn.PlusDays(1) } }).ShouldBeFalse();
        PackSigning.IsGenuine(signed with { Files = signed.Files.Add(new PackedFile("z.byre", [])) }).ShouldBeFalse();
        PackSigning.IsGenuine(signed with { Files = [signed.Files[0] with { Bytes = [.. "event heat # !\n"u8] }] }).ShouldBeFalse();
        PackSigning.IsGenuine(Pack).ShouldBeFalse();
    }

    [Fact]
    public void A_key_is_read_back_from_its_file_and_from_nothing_else()
    {
        var key = PackSigning.NewPrivateKey();
        KeyFile.ReadPrivate(KeyFile.OfPrivate(key).ReplaceLineEndings("\r\n")).ShouldBe(key);
        KeyFile.ReadPublic(KeyFile.OfPrivate(key)).ShouldBeNull();
        KeyFile.ReadPrivate("event heat\n").ShouldBeNull();
    }
}
