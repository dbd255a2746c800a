using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>
/// A cow that is in calf, and honest records of her: how she came by it is written down, and a scan finds the calf once it can (by a hand from six
/// weeks on, by all else from four), and nothing before. Nothing here is taken from the floor.
/// </summary>
public static class GenInCalf
{
    /// <summary>Her number.</summary>
    public const string Number = "7";

    private const int Gestation = 280;
    private const int SeenByScan = 28;
    private const int SeenByHand = 42;
    private const int DriedOff = 220;

    public static readonly Gen<FloorCase> Any =
        from season in Season.Any
        from words in GenFloorWords.Any
        from carried in Gen.Int[0, 240]
        from life in Life(season.Known, words, carried)
        from files in GenFloorRules.For(season, words, [Number])
        from after in Gen.Int[0, 30]
        select new FloorCase(files, life, season.Known.PlusDays(after));

    private static Gen<PlainFarm> Life(LocalDate known, FloorWordsDrawn words, int carried) =>
        from calved in Gen.Frequency((3, Gen.Int[40, 150].Select(days => (int?)days)), (1, Gen.Const((int?)null)))
        from way in Gen.Int[0, 5]
        from before in Gen.Int[0, 20]
        from after in Gen.Int[0, 20]
        from scans in Gen.Select(Gen.Int[0, 300], Gen.OneOf("ultrasound", "hand", "")).Array[0, 3]
        from heats in Gen.Int[0, 60].Array[0, 2]
        from origin in Gen.OneOf("home-bred", "home-bred", "")
        let conceived = known.PlusDays(-carried)
        select new PlainFarm(
            ["origin"],
            [
                new AnimalRow(Number, Text(known.PlusDays(-1200)), "F", "Home", "", [origin]),
                .. way == 5 ? new[] { new AnimalRow("B2", Text(known.PlusDays(-1300)), "M", "Home", "", ["home-bred"]) } : [],
            ],
            [.. Rows(known, words, conceived, calved, way, before, after, scans).Concat(heats.Select(day => new EventRow(Text(known.PlusDays(-day)), Number, "heat")))
                .Where(row => string.CompareOrdinal(row.Date, Text(known)) <= 0)]);

    private static IEnumerable<EventRow> Rows(
        LocalDate known, FloorWordsDrawn words, LocalDate conceived, int? calved, int way, int before, int after, (int Ago, string Method)[] scans)
    {
        if (calved is { } days)
        {
            yield return new EventRow(Text(conceived.PlusDays(-days - Gestation)), Number, words.Mating);
            yield return new EventRow(Text(conceived.PlusDays(-days)), Number, "calving");
        }

        var whom = way == 3 ? Number : way == 4 ? "mob:Home" : "";
        if (whom.Length > 0)
        {
            yield return new EventRow(Text(conceived.PlusDays(-before)), whom, "bull in");
            yield return new EventRow(Text(conceived.PlusDays(after)), whom, "bull out");
        }
        else if (way < 3)
        {
            yield return new EventRow(Text(conceived), Number, way == 2 ? "transfer" : words.Mating);
        }

        if (Period.DaysBetween(conceived, known) >= DriedOff)
        {
            yield return new EventRow(Text(conceived.PlusDays(DriedOff)), Number, "drying off");
        }

        // A bull may have served her on any day, so nobody knows the day but the cow; a scan goes by it all the same.
        foreach (var (ago, method) in scans)
        {
            var on = known.PlusDays(-ago);
            var carries = Period.DaysBetween(conceived, on);
            var isSeen = carries >= (method is "hand" or "" ? SeenByHand : SeenByScan);
            if (on > conceived.PlusDays(-(calved ?? Gestation)))
            {
                yield return new EventRow(Text(on), Number, words.Test, isSeen ? "pregnant" : "empty", Method: method);
            }
        }
    }

    private static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
