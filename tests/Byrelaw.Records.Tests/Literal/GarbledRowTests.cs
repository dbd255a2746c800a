namespace Byrelaw.Records.Tests.Literal;

/// <summary>A row with one cell garbled never tells more than the row did.</summary>
public class GarbledRowTests
{
    private const string Animals = "animal,born,sex,mob\n1,2020-01-01,F,A\n2,2025-12-02,F,B\n3,,F,\n4,2025-12,F,A\n";
    private static readonly Kind[] Asked = [Words.Heat, Words.Mastitis, Words.Mob, Words.Purchase, Words.Sale, Words.Weight];
    private static readonly int First = Day.Number(Words.Date("2025-12-01"));
    private const int Days = 31;

    private static readonly Gen<string[]> Row =
        from day in Gen.Int[2, Days]
        from who in Gen.OneOf("1", "2", "3", "4", "mob:A", "mob:B", "herd")
        from what in Gen.OneOf("heat,,", "mastitis,,", "mob,A,", "mob,B,", "purchase,,", "sale,,", "weight,500,kg")
        select $"2025-12-{day:00},{who},{what}".Split(',');

    [Fact]
    public void A_garbled_cell_covers_no_further_day_and_tells_nothing_new()
    {
        var plays =
            from rows in Row.Array[1, 7]
            from row in Gen.Int[0, rows.Length - 1]
            from cell in Gen.Int[0, 3]
            select (Rows: rows, Row: row, Cell: cell);
        plays.Hold(play =>
        {
            var herd = Herd(play.Rows);
            var garbled = (string[])play.Rows[play.Row].Clone();
            garbled[play.Cell] = garbled[2] == "mob" && play.Cell == 3 ? "" : "\u00bf";
            string[][] rows = [.. play.Rows[..play.Row], garbled, .. play.Rows[(play.Row + 1)..]];
            More(Herd(rows), herd).FirstOrDefault().ShouldBeNull($"line {play.Row + 2}\n" + Text(play.Rows) + "became\n" + Text(rows));
        }, count: 500);
    }

    /// <summary>What the garbled records say that the whole ones do not.</summary>
    private static IEnumerable<string> More(Herd garbled, Herd whole)
    {
        for (var animal = 0; animal < whole.Count; animal++)
        {
            for (var day = First - 2; day < First + Days + 2; day++)
            {
                var (presence, mob) = (garbled.Membership.At(animal, day), garbled.Mobs.At(animal, day));
                if (presence != Presence.NotKnown && presence != whole.Membership.At(animal, day))
                {
                    yield return $"{whole.Numbers[animal]} is {presence} on {Shown.Date(day)}";
                }

                if (mob >= 0 && presence != Presence.Out && (whole.Mobs.At(animal, day) is var known && (known < 0 || whole.Mobs.Names[known] != garbled.Mobs.Names[mob])))
                {
                    yield return $"{whole.Numbers[animal]} is in {garbled.Mobs.Names[mob]} on {Shown.Date(day)}";
                }

                foreach (var kind in Asked.Where(kind => garbled.Coverage.Covers(animal, kind.Id, day, day, true)))
                {
                    if (!whole.Coverage.Covers(animal, kind.Id, day, day, true))
                    {
                        yield return $"{kind.Name} of {whole.Numbers[animal]} is covered on {Shown.Date(day)}";
                    }

                    if (Has(garbled, kind, animal, day) != Has(whole, kind, animal, day))
                    {
                        yield return $"{kind.Name} of {whole.Numbers[animal]} on {Shown.Date(day)} came or went without a gap";
                    }
                }

                foreach (var kind in Asked.Where(kind => Has(garbled, kind, animal, day) && !Has(whole, kind, animal, day)))
                {
                    yield return $"{kind.Name} of {whole.Numbers[animal]} on {Shown.Date(day)} is new";
                }
            }
        }
    }

    private static bool Has(Herd herd, Kind kind, int animal, int day) => herd.Runs[kind.Id].DaysOf(animal).Contains(day);

    private static Herd Herd(string[][] rows)
    {
        (Kind, string)[] complete = [.. Asked.Select(kind => (kind, "2025-12-03"))];
        return Read.Herd(Text(rows).Insert(0, "date,animal,kind,value,unit\n"), Animals, Words.Keeping("2025-12-31", null, complete));
    }

    private static string Text(string[][] rows) => string.Concat(rows.Select(row => string.Join(',', row) + "\n"));
}
