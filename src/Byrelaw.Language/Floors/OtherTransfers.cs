namespace Byrelaw.Language.Floors;

/// <summary>
/// Events of a farm's own that mark a transfer: <c>event "put in" marks transfer</c>. By its declaration an embryo is put into her, so the floor asks of each what it asks of a
/// transfer; as nothing is known of the embryo's age, 28 days from the day itself.
/// </summary>
internal static class OtherTransfers
{
    /// <summary>Those beside the event named transfer.</summary>
    public static IEnumerable<EventKind> Of(IEnumerable<Kind> kinds) =>
        kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Transfer && NameFolding.Fold(kind.Name) != "transfer");

    /// <summary>The floor's text with them.</summary>
    /// <param name="text">Without them.</param>
    /// <param name="names">As a rule file writes them.</param>
    public static string Into(string text, IReadOnlyList<string> names)
    {
        var any = string.Concat(names.Select(name => $" or {name}"));
        var cleared = string.Concat(names.Select((_, i) => $"    - {Cleared(i)}\n"));
        return string.Concat(names.Select((name, i) => $"""
            define {Cleared(i)}
              any of
                - no {name} since last calving
                - latest pregnancy test with method not hand from 28 days after last {name} is empty
                - latest pregnancy test with method hand from 42 days after last {name} is empty
                - floor bought empty

            """)) + text.ReplaceLineEndings("\n")
            .Replace("    - floor transfer cleared\n", $"    - floor transfer cleared\n{cleared}", StringComparison.Ordinal)
            .Replace("no mating or transfer or drying off", $"no mating or transfer{any} or drying off", StringComparison.Ordinal)
            .Replace("no mating in the last 27 days", $"no mating{any} in the last 27 days", StringComparison.Ordinal);
    }

    // Names of defines hold letters.
    private static string Cleared(int place) => $"floor own embryo {(char)('a' + place)} cleared";
}
