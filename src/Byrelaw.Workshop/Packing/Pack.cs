namespace Byrelaw.Workshop.Packing;

/// <summary>A programme's rule files in one text, to hand on.</summary>
/// <param name="MadeWith">The program that packed it, with its version.</param>
/// <param name="Issue">When it was packed, and as which issue of these rules.</param>
/// <param name="Opens">The path in the pack of the file that was packed; the others are those it uses.</param>
/// <param name="Fingerprint">Of the resolved rulebook: <c>sha256:</c> and the SHA-256 of <paramref name="Canonical"/>.</param>
/// <param name="Canonical">The resolved rulebook's canonical text.</param>
/// <param name="Files">Every file, byte for byte, sorted by path.</param>
/// <param name="Signature">Who vouches for it; null for nobody.</param>
public sealed record Pack(
    string MadeWith, PackIssue Issue, string Opens, string Fingerprint, string Canonical, ImmutableArray<PackedFile> Files, PackSignature? Signature = null);

/// <summary>One file of a pack.</summary>
/// <param name="Path">Relative, forward slashes, never outside the folder that the pack is opened in.</param>
/// <param name="Bytes">As they were.</param>
public sealed record PackedFile(string Path, ImmutableArray<byte> Bytes);

/// <summary>A detached Ed25519 signature (RFC 8032) over the pack's manifest (<see cref="PackManifest"/>).</summary>
/// <param name="PublicKey">32 bytes.</param>
/// <param name="Signature">64 bytes.</param>
public sealed record PackSignature(ImmutableArray<byte> PublicKey, ImmutableArray<byte> Signature);

/// <summary>Why a pack is refused.</summary>
/// <param name="Line">Of the pack, from 1; 0 where no line is to blame.</param>
/// <param name="Found">What is wrong.</param>
/// <param name="Mend">What can be done about it.</param>
public sealed record PackProblem(int Line, string Found, string Mend);
