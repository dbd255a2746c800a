using NodaTime.Text;

namespace Byrelaw.Records.Tests.Literal;

/// <summary>Holds presence and coverage to the specification on random rows, many of which cannot be read.</summary>
public class ByDayTests
{
    private const int KnownDay = 20;
    private const int Since = 3;

    private static readonly string Animals =
        $"animal,born,sex\n1,2020-01-01,F\n2,{LocalDatePattern.Iso.Format(LiteralRow.First.PlusDays(LiteralRow.BornInPlay))},F\n3,,F\n";

    private static readonly Gen<LiteralRow[]> Rows = LiteralRow.Any.Where(row => row.Day is null or <= KnownDay).Array[0, 6];

    [Fact]
    public void Presence_is_what_the_specification_says_on_every_day() => Rows.Hold(rows =>
    {
        var (herd, literal) = Both(rows);
        var wrong =
            from animal in Enumerable.Range(0, 3)
            from day in Enumerable.Range(0, LiteralRow.Days)
            let found = herd.Membership.At(animal, Day.Number(LiteralRow.First) + day)
            let expected = literal.PresenceOn(animal, day)
            where found != expected
            select $"animal {animal + 1} on day {day} is {found}, expected {expected}, rows\n{Text(rows)}";
        wrong.FirstOrDefault().ShouldBeNull();
    }, count: 1000);

    [Fact]
    public void Coverage_is_what_the_specification_says_over_every_stretch_of_days() => Rows.Hold(rows =>
    {
        var (herd, literal) = Both(rows);
        var first = Day.Number(LiteralRow.First);
        var wrong =
            from animal in Enumerable.Range(0, 3)
            from strict in new[] { false, true }
            let isCovered = Enumerable.Range(0, LiteralRow.Days).Select(day => literal.CoversHeatOn(animal, day, strict)).ToArray()
            from start in Enumerable.Range(0, LiteralRow.Days)
            from length in Enumerable.Range(0, LiteralRow.Days - start)
            let expected = isCovered[start..(start + length)].All(covered => covered)
            where herd.Coverage.Covers(animal, Words.Heat.Id, first + start, first + start + length - 1, strict) != expected
            select $"animal {animal + 1}, {length} days from day {start}, strict {strict}, expected {expected}, rows\n{Text(rows)}";
        wrong.FirstOrDefault().ShouldBeNull();
    }, count: 300);

    private static (Herd Herd, LiteralHerd Literal) Both(LiteralRow[] rows)
    {
        var keeping = Words.Keeping(
            LocalDatePattern.Iso.Format(LiteralRow.First.PlusDays(KnownDay)), null,
            (Words.Heat, LocalDatePattern.Iso.Format(LiteralRow.First.PlusDays(Since))));
        return (Read.Herd(Read.Heading([.. rows.Select(row => row.Text())]), Animals, keeping), new LiteralHerd(rows, Since, KnownDay));
    }

    private static string Text(LiteralRow[] rows) => string.Join('\n', rows.Select(row => row.Text()));
}
