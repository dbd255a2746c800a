using System.Buffers;

namespace Byrelaw.Workshop.Packing;

/// <summary>Which paths a pack may hold: plain ones, that stay in the folder on every kind of machine.</summary>
internal static class PackPath
{
    private static readonly SearchValues<char> Forbidden = SearchValues.Create("\\:*?\"<>|");

    /// <summary>Names that stand for a device on some machines, whatever follows after a full stop.</summary>
    private static readonly FrozenSet<string> Devices = new[] { "con", "prn", "aux", "nul", "conin$", "conout$" }
        .Concat(Enumerable.Range(0, 10).SelectMany(number => new[] { $"com{number}", $"lpt{number}" })).ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>What is wrong with a path; null where nothing is.</summary>
    public static string? Fault(string path)
    {
        if (path.Length is 0 or > PackLimits.Path)
        {
            return path.Length == 0 ? "is empty" : $"is longer than {PackLimits.Path} characters";
        }

        if (path.AsSpan().ContainsAny(Forbidden) || path.Any(IsUnseen))
        {
            return "holds a sign that not every machine takes in the name of a file, or that nobody sees";
        }

        var parts = path.Split('/');
        return parts.Any(part => part is "" or "." or ".." || part[^1] is ' ' or '.')
            ? "leads outside the folder, or has an empty part, or a part that ends in a space or a full stop"
            : parts.Any(part => part[0] == '.') ? "has a part that begins with a full stop, as settings of other programs do"
            : parts.Any(part => Devices.Contains(part.Split('.')[0].TrimEnd())) ? "has a part that some machines take for a device"
            : !path.EndsWith(".byre", StringComparison.Ordinal) ? "does not end in .byre, as rule files do"
            : null;
    }

    private static bool IsUnseen(char sign) => char.IsControl(sign) || char.GetUnicodeCategory(sign) is
        UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse;

    /// <summary>Where a file's <c>use</c> line leads, both seen from the pack's own folder; null where it leaves it.</summary>
    public static string? Resolve(string from, string relative)
    {
        var parts = from.Split('/').SkipLast(1).ToList();
        foreach (var part in relative.Split('/'))
        {
            if (part is ".." && parts.Count == 0)
            {
                return null;
            }

            if (part is "..")
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else if (part is not ("" or "."))
            {
                parts.Add(part);
            }
        }

        return string.Join('/', parts);
    }
}
