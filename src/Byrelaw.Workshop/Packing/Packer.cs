namespace Byrelaw.Workshop.Packing;

/// <summary>Makes a pack of files, and holds a pack to what its files say.</summary>
public static class Packer
{
    /// <summary>Packs files that read without errors.</summary>
    /// <param name="opens">The path (in the pack) of the file to open.</param>
    /// <param name="files">All that it needs, by path in the pack.</param>
    /// <param name="madeWith">The program and its version.</param>
    /// <param name="issue">Which pack of these rules it is.</param>
    /// <returns>The pack, or why these files cannot be packed.</returns>
    public static (Pack? Pack, PackProblem? Problem) Pack(string opens, IEnumerable<PackedFile> files, string madeWith, PackIssue issue)
    {
        ImmutableArray<PackedFile> sorted = [.. files.OrderBy(file => file.Path, StringComparer.Ordinal)];
        foreach (var file in sorted)
        {
            if (PackPath.Fault(file.Path) is { } fault)
            {
                return (null, new PackProblem(0, $"the path `{file.Path}` {fault}", "give the file or its folder another name"));
            }
        }

        var pack = new Pack(madeWith, issue, opens, "", "", sorted);
        var (canonical, fingerprint, _) = Resolved(pack);
        pack = pack with { Canonical = canonical, Fingerprint = fingerprint };
        return PackWriter.Write(pack).Length > PackLimits.Bytes
            ? (null, new PackProblem(0, $"together the files are larger than {PackLimits.Bytes / 1024 / 1024} MiB", "a pack holds rule files, not records"))
            : (pack, null);
    }

    /// <summary>Whether the files of a pack resolve to the rulebook that it says, and are no more than that uses.</summary>
    /// <returns>Null where it is so.</returns>
    public static PackProblem? Check(Pack pack, string program)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var (canonical, _, used) = Resolved(pack);
        if (pack.Files.FirstOrDefault(file => !used.Contains(file.Path)) is { } extra)
        {
            return new PackProblem(0, $"the pack holds `{extra.Path}`, which its rules do not use", "do not unpack it; a pack holds rules and nothing else: ask where it comes from");
        }

        return canonical == pack.Canonical ? null : new PackProblem(
            0, "the files of the pack are not the rulebook that it says",
            pack.MadeWith == program ? "do not unpack it; ask where it comes from"
                : $"it was made with {pack.MadeWith}, and this is {program}: unpack it with the same version, or ask where it comes from");
    }

    private static (string Canonical, string Fingerprint, IReadOnlySet<string> Used) Resolved(Pack pack)
    {
        var files = new RuleFilesKept(new PackedRuleFiles(pack));
        var rulebook = RulebookReader.Read(pack.Opens, files)!.Rulebook;
        return (CanonicalText.Of(rulebook), Fingerprint.Of(rulebook), files.Kept.Keys.ToHashSet(StringComparer.Ordinal));
    }
}
