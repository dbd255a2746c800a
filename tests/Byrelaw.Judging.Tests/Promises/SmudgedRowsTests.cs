namespace Byrelaw.Judging.Tests.Promises;

/// <summary>What cannot be read never lends a promise belief: with any one row smudged, each promise that fell falls, and each kind that fell silent is silent from no later.</summary>
public sealed class SmudgedRowsTests
{
    private static readonly LocalDate Known = new(2026, 10, 4);

    /// <summary>Two calvings without a father in some hundred, by cows who were bought.</summary>
    private static readonly Gen<string[]> AlmostNoFathers =
        from cows in Gen.Int[45, 51]
        from bought in Gen.Int[0, 4]
        select (string[])[.. Enumerable.Range(0, cows).SelectMany(cow => Fathers(cow, fatherless: cow < 2, bought: cow < bought))];

    /// <summary>Few services, on the same days of some years, and none of late.</summary>
    private static readonly Gen<string[]> AlmostSilent =
        from quiet in Gen.Int[15, 60]
        from earlier in Gen.Int[3, 5]
        from days in Gen.Int[0, 70].Array[earlier * 2]
        from first in Gen.Int[300, 800]
        select (string[])[.. days.Select((day, i) => Row(-365 * (1 + (i / earlier)) - 70 + day, 1, "mating")), Row(-quiet, 1, "mating"), Row(-quiet - first, 1, "mating")];

    /// <summary>A cow or two, and fewer heats than cows have.</summary>
    private static readonly Gen<string[]> AlmostNoHeats =
        from calved in Gen.Int[100, 1400].Array[1, 3]
        from heats in Gen.Int[1, 90].Array[0, 3]
        select (string[])[.. calved.Select((days, cow) => Row(-days, cow, "calving")), .. calved.Select((_, cow) => Row(-50, cow, "mastitis")), .. heats.Select(days => Row(-days, 0, "heat"))];

    [Fact]
    public void A_smudged_row_gives_no_promise_back() => Each.Hold(
        from events in Gen.OneOf(AlmostNoFathers, AlmostSilent, AlmostNoHeats)
        from row in Gen.Int[0, events.Length - 1]
        from cell in Gen.Int[-1, 2]
        select (Events: events, Row: row, Cell: cell),
        400,
        one =>
        {
            var cells = one.Events[one.Row].Split(',');
            if (one.Cell < 0)
            {
                // The month alone.
                cells[0] = cells[0][..7];
            }
            else
            {
                cells[one.Cell] = "?" + cells[one.Cell];
            }

            var (before, after) = (Believe(one.Events), Believe([.. one.Events[..one.Row], string.Join(',', cells), .. one.Events[(one.Row + 1)..]]));
            var kind = before.Vocabulary.Kinds.FirstOrDefault(kind =>
                after.Coverage.Since[kind.Id] < before.Coverage.Since[kind.Id] || after.Coverage.Reach[kind.Id] > before.Coverage.Reach[kind.Id]);
            return kind is null ? null : $"{kind.Name} is believed once {string.Join(',', cells)} cannot be read";
        },
        one => string.Join('\n', one.Events));

    /// <summary>Two calvings, the first perhaps without a service before it, and an illness in between with the service of the second well before it.</summary>
    private static IEnumerable<string> Fathers(int cow, bool fatherless, bool bought)
    {
        yield return Row(-60 - cow, cow, "calving");
        yield return Row(-60 - cow - 282, cow, "mating");
        yield return Row(-60 - cow - 282 + 250, cow, "mastitis");
        yield return Row(-60 - cow - 365, cow, "calving");
        if (!fatherless)
        {
            yield return Row(-60 - cow - 365 - 282, cow, "mating");
        }

        if (bought)
        {
            yield return Row(-60 - cow - 365 - 330, cow, "purchase");
        }
    }

    private static string Row(int days, int cow, string kind) => $"{Known.PlusDays(days):uuuu'-'MM'-'dd},{cow},{kind},";

    private static Herd Believe(string[] events) => new PromisingFarm
    {
        Animals = Enumerable.Range(0, 52).Select(i => $"{i},2016-01-01,F"),
        Events = events,
        Own = "expectation \"Heats are seen\"\n  at least 40 heat a year for every 20 cows\n  else heat is not complete\n  because \"Cows come on heat.\"\n  source \"invented\"\n\n",
        Records = "up to 2026-10-04\ncomplete for calving, abortion, pregnancy test, mating, transfer, bull in, bull out, purchase, sale, death, heat since 2018-01-01",
    }.Believe();
}
