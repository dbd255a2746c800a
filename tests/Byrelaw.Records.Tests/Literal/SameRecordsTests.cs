namespace Byrelaw.Records.Tests.Literal;

/// <summary>Records that differ in what means nothing say the same of every animal on every day: who is in the herd, in which mob, what happened, what is covered.</summary>
public class SameRecordsTests
{
    private static readonly string[] Numbers = ["1", "2", "3", "4"];
    private static readonly string[] Cells = ["2020-01-01,F,A", "2025-12-02,F,B", ",F,", "2025-12,F,A"];
    private static readonly Kind[] Asked = [Words.Heat, Words.Mastitis, Words.Mob, Words.Purchase, Words.Sale, Words.Weight];
    private static readonly int First = Day.Number(Words.Date("2025-12-01"));
    private const int Days = 31;

    private static readonly Gen<string[]> Row =
        from day in Gen.Int[2, Days]
        from who in Gen.OneOf("1", "2", "3", "4", "mob:A", "mob:B", "herd")
        from what in Gen.OneOf("heat,,", "mastitis,,", "mob,A,", "mob,B,", "purchase,,", "sale,,", "weight,500,kg", "mob,,", "weight,,kg")
        select $"2025-12-{day:00},{who},{what}".Split(',');

    private static readonly Gen<string[][]> Rows = Row.Array[1, 7];

    [Fact]
    public void Which_number_an_animal_has_makes_no_difference() => Rows.Hold(rows =>
    {
        var turned = rows.Select(row => Array.IndexOf(Numbers, row[1]) is var place and >= 0 ? [row[0], Numbers[^(place + 1)], .. row[2..]] : row).ToArray();
        var (herd, other) = (Herd(rows, Cells), Herd(turned, [.. Cells.Reverse()]));
        for (var animal = 0; animal < Numbers.Length; animal++)
        {
            Said(other, Numbers.Length - 1 - animal).ShouldBe(Said(herd, animal), $"animal {Numbers[animal]}\n{Text(rows)}became\n{Text(turned)}");
        }
    }, count: 300);

    [Fact]
    public void The_order_of_rows_makes_no_difference() => Rows.Hold(rows =>
    {
        var herd = Herd(rows, Cells);
        string[][] turned = [.. rows.Reverse()];
        for (var animal = 0; animal < Numbers.Length; animal++)
        {
            Said(Herd(turned, Cells), animal).ShouldBe(Said(herd, animal), $"animal {Numbers[animal]}\n{Text(rows)}became\n{Text(turned)}");
        }
    }, count: 300);

    [Fact]
    public void An_event_or_a_move_that_is_written_twice_is_one() => Rows.Hold(rows =>
    {
        var herd = Herd(rows, Cells);
        string[][] doubled = [.. rows.SelectMany(row => row[2] == Words.Weight.Name ? [row] : new[] { row, row })];
        for (var animal = 0; animal < Numbers.Length; animal++)
        {
            Said(Herd(doubled, Cells), animal).ShouldBe(Said(herd, animal), $"animal {Numbers[animal]}\n{Text(rows)}became\n{Text(doubled)}");
        }
    }, count: 300);

    private static string Said(Herd herd, int animal)
    {
        var said = new StringBuilder();
        for (var day = First - 2; day < First + Days + 2; day++)
        {
            var mob = herd.Mobs.At(animal, day);
            said.Append(Shown.Date(day)).Append(' ').Append(herd.Membership.At(animal, day)).Append(' ').Append(mob < 0 ? "?" : herd.Mobs.Names[mob]);
            foreach (var kind in Asked)
            {
                said.Append(herd.Coverage.Covers(animal, kind.Id, day, day, strict: true) ? " covered" : " open");
                said.Append(herd.Coverage.Covers(animal, kind.Id, First - 2, day, strict: false) ? "+" : "");
                foreach (var entry in Entries(herd, kind, animal, day).Order(StringComparer.Ordinal))
                {
                    said.Append(' ').Append(kind.Name).Append(' ').Append(entry);
                }
            }

            said.Append('\n');
        }

        return said.ToString();
    }

    private static IEnumerable<string> Entries(Herd herd, Kind kind, int animal, int day)
    {
        var run = herd.Runs[kind.Id];
        for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
        {
            if (run.Days[place] == day)
            {
                yield return run.Low.Length > 0 ? $"{run.Low[place]} to {run.High[place]}" : "once";
            }
        }
    }

    private static Herd Herd(string[][] rows, string[] cells)
    {
        (Kind, string)[] complete = [.. Asked.Select(kind => (kind, "2025-12-03"))];
        var animals = "animal,born,sex,mob\n" + string.Concat(Numbers.Zip(cells, (number, rest) => $"{number},{rest}\n"));
        return Read.Herd(Text(rows).Insert(0, "date,animal,kind,value,unit\n"), animals, Words.Keeping("2025-12-31", null, complete));
    }

    private static string Text(string[][] rows) => string.Concat(rows.Select(row => string.Join(',', row) + "\n"));
}
