using System.Security.Cryptography;
using Org.BouncyCastle.Math.EC.Rfc8032;

namespace Byrelaw.Workshop.Packing;

/// <summary>Signs packs and checks their signatures: Ed25519 as in RFC 8032, over the manifest in UTF-8.</summary>
public static class PackSigning
{
    /// <summary>Bytes of a private key's seed and of a public key.</summary>
    public const int KeyLength = 32;

    /// <summary>A new private key.</summary>
    public static byte[] NewPrivateKey() => RandomNumberGenerator.GetBytes(KeyLength);

    /// <summary>The public key that belongs to a private one.</summary>
    public static byte[] PublicKeyOf(byte[] privateKey)
    {
        var key = new byte[KeyLength];
        Ed25519.GeneratePublicKey(privateKey, 0, key, 0);
        return key;
    }

    /// <summary>The pack, signed.</summary>
    public static Pack Sign(Pack pack, byte[] privateKey)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return pack with { Signature = new PackSignature([.. PublicKeyOf(privateKey)], [.. Sign(Encoding.UTF8.GetBytes(PackManifest.Of(pack)), privateKey)]) };
    }

    /// <summary>The signature of some bytes.</summary>
    internal static byte[] Sign(byte[] message, byte[] privateKey)
    {
        var signature = new byte[Ed25519.SignatureSize];
        Ed25519.Sign(privateKey, 0, message, 0, message.Length, signature, 0);
        return signature;
    }

    /// <summary>Whether a pack's signature is that of its public key; false for a pack that nobody signed.</summary>
    public static bool IsGenuine(Pack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        if (pack.Signature is not { } signed)
        {
            return false;
        }

        var text = Encoding.UTF8.GetBytes(PackManifest.Of(pack));
        return Ed25519.Verify([.. signed.Signature], 0, [.. signed.PublicKey], 0, text, 0, text.Length);
    }
}
