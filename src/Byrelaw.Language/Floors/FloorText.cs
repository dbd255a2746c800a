namespace Byrelaw.Language.Floors;

/// <summary>
/// The floor as it would be written in a rule file: four safety rules that lie under every list that leads to a hormone or an
/// embryo, and the words that only they use. Its numbers are those of the base rules, and no file can reach them.
/// </summary>
internal static class FloorText
{
    /// <summary>How messages and pages name it.</summary>
    public const string Path = "the floor";

    /// <summary>Whether a name is kept for the floor.</summary>
    public static bool Keeps(string name) => NameFolding.Fold(name).StartsWith("floor", StringComparison.Ordinal);

    /// <summary>What pages call a defined name: those of the floor without the word that keeps them for it.</summary>
    public static string Spoken(string name) => Keeps(name) && name.IndexOf(' ', StringComparison.Ordinal) is > 0 and var space ? name[(space + 1)..] : name;

    /// <summary>Whether a text is the floor's: no file of a farm's is.</summary>
    public static bool Is(SourceFile source) => source.IsOfTheProgram;

    /// <summary>The text.</summary>
    /// <param name="withAbortion">Whether the rulebook has a word for a slipped calf; without it nothing but a scan ends a pregnancy.</param>
    /// <param name="others">Tests of a farm's own that may find a calf.</param>
    /// <param name="transfers">Events of a farm's own that mark a transfer, beside the one of that name.</param>
    public static string Of(bool withAbortion, IReadOnlyList<(TestKind Test, ImmutableArray<string> Answers)> others, IReadOnlyList<EventKind> transfers)
    {
        var text = withAbortion ? Text : Text.Replace(" or abortion", "", StringComparison.Ordinal);
        text = transfers.Count == 0 ? text : OtherTransfers.Into(text, [.. transfers.Select(kind => NameText.Text(kind.Name))]);
        return others.Count == 0 ? text : string.Join('\n', OtherTests.Lines(others, withAbortion ? "calving or abortion or purchase" : "calving or purchase"))
            + "\n" + text.Replace("    - floor service cleared\n    - floor bull cleared\n", "    - floor service cleared\n    - floor bull cleared\n    - floor own tests agree\n", StringComparison.Ordinal);
    }

    // No transfer in the last 27 days has day 28 behind it, however old the embryo was: said beside it, because the records may
    // reach back four weeks and no further.
    private const string Text = """
        define floor scans found no calf
          any of
            - no pregnant pregnancy test since last calving or purchase
            - floor found empty since
        define floor found empty since
          all of
            - latest pregnancy test since last calving or purchase is empty
            - floor better tests agree
        define floor better tests agree
          any of
            - no pregnant pregnancy test since last calving or abortion or purchase
            - latest pregnancy test with method not hand since last calving or abortion or purchase is empty
            - latest pregnancy test with method not hand from 1 day after last pregnancy test with method hand is empty
        define floor service cleared
          all of
            - floor mating cleared
            - floor transfer cleared
        define floor mating cleared
          any of
            - no mating since last calving
            - latest pregnancy test with method not hand from 28 days after last mating is empty
            - latest pregnancy test with method hand from 42 days after last mating is empty
            - floor bought empty
        define floor transfer cleared
          any of
            - no transfer since last calving
            - latest pregnancy test with method not hand from day 28 of last transfer is empty
            - latest pregnancy test with method hand from 42 days after last transfer is empty
            - floor bought empty
        define floor transfer long ago
          any of
            - no transfer in the last 27 days
            - at least day 28 of last transfer
        define floor bull cleared
          any of
            - not running with bull since last calving
            - latest pregnancy test with method not hand from 35 days after last running with bull is empty
            - latest pregnancy test with method hand from 42 days after last running with bull is empty
        define floor bought in
          any of
            - origin is bought
            - at least 1 purchase in the last 2 years
        define floor bought empty
          all of
            - floor bought in
            - no mating or transfer or drying off since last purchase
            - floor tested empty since she came
        define floor tested empty since she came
          any of
            - latest pregnancy test with method not hand from 35 days after last purchase is empty
            - latest pregnancy test with method hand from 42 days after last purchase is empty
        define floor drying off cleared
          any of
            - less than 150 days since last calving
            - no drying off since last calving
            - latest pregnancy test from 1 day after last drying off is empty
            - floor bought empty
        rules for every list
        safety rule "Floor: not in calf"
          needs all of
            - floor scans found no calf
            - floor service cleared
            - floor bull cleared
          because "A hormone, or a pipette through the cervix, ends a pregnancy. She counts as empty only"
                  "if a test late enough to find a calf found none."
          source "28 days: common practice, no source; 35 days and then an empty scan: from memory"
        safety rule "Floor: not dry in calf"
          applies to cows
          needs floor drying off cleared
          because "A cow is dried off to calve. Until she has, or someone finds her empty, she is in calf."
          source "common practice, no source"
        safety rule "Floor: days since service"
          needs all of
            - no mating in the last 27 days
            - floor transfer long ago
          because "Up to the 27th day after she was served no test can tell whether it took."
          source "scan from 28 days after service: common practice, no source"
        safety rule "Floor: away from the bull"
          needs not running with bull in the last 35 days
          because "Nobody saw what the bull did on his last day. Five weeks after it a test can tell."
          source "35 days after the bull left, and then an empty scan: from memory"
        """;
}
