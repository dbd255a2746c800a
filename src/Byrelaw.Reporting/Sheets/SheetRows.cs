using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>What every row of a sheet says of an animal first: mob, number, tag, cow or heifer.</summary>
internal static class SheetRows
{
    /// <summary>The headings.</summary>
    public static readonly Column[] Columns = ["mob", "number", "tag", "cow or heifer"];

    /// <summary>The cells.</summary>
    public static Wording[] Of(Plan plan, SheetAnimal who) =>
        [Particulars.Mob(plan.Draft.Herd, who.Animal), Wording.Bold(who.Number), Particulars.Tag(plan.Draft.Herd, who.Animal), who.Sort is { } sort ? Particulars.Sort(sort) : ""];

    /// <summary>A table whose rows begin so, by mob.</summary>
    public static Table Table<T>(Plan plan, string caption, Column[] more, IEnumerable<T> rows, Func<T, SheetAnimal> who, Func<T, Wording[]> cells, bool byMob = true)
    {
        var table = new Table(caption, [.. Columns, .. more]);
        foreach (var row in byMob ? rows.OrderBy(row => Particulars.Mob(plan.Draft.Herd, who(row).Animal), StringComparer.Ordinal) : rows)
        {
            table.Add([.. Of(plan, who(row)), .. cells(row)]);
        }

        return table;
    }

    /// <summary>Rules that the farm waives for her, of those that stand between her and the morning.</summary>
    public static string Waived(NamedSession session, SheetAnimal who) => Phrases.And(
        [.. session.Session.Lists.SelectMany(list => list.Animals.Where(animal => animal.Animal == who.Animal)).SelectMany(animal => animal.Rules).Where(rule => rule.Waiver is not null).Select(rule => rule.Name).Distinct()]) is { Length: > 0 } rules
        ? $"waived: {rules}" : "";

    /// <summary>Those to ask about, with what is missing of each.</summary>
    public static IEnumerable<Wording> ToAsk(IEnumerable<NamedAnimal> animals, int year) => animals.Select(animal => (animal.Number, Missing: AskedWords.All(animal.ToFindOut, year)))
        .GroupBy(one => one.Missing).Select<IGrouping<string, (string Number, string Missing)>, Wording>(alike => $"{Wording.Bold(string.Join(", ", alike.Select(one => one.Number)))}: {(alike.Key.Length == 0 ? "something is not known of her" : alike.Key)}");
}
