namespace Byrelaw.Reporting.Files;

/// <summary>Which animals have a page of their own in a report.</summary>
/// <param name="Words">As it was asked for: <c>all</c>, <c>asked</c>, <c>none</c> or numbers with commas; null for what the herd's size makes best.</param>
public sealed record PagesAsked(string? Words = null)
{
    /// <summary>Up to so many animals all have a page.</summary>
    public const int AllUpTo = 300;

    /// <summary>Whether nobody asked, so that the herd's size decides.</summary>
    public bool IsLeftToSize => Words is null;

    /// <summary>The same in a word, for a herd of so many.</summary>
    public string For(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return Words ?? (herd.Count <= AllUpTo ? "all" : "asked");
    }

    /// <summary>Numbers that are asked for and stand on no list of the draft.</summary>
    public IEnumerable<string> Unknown(Draft draft) => NumbersOf(For(draft.Herd)) is { } numbers
        ? numbers.Except(draft.Lists.SelectMany(list => list.Animals).Select(animal => animal.Number)) : [];

    /// <summary>The animals that have a page, by number.</summary>
    public IEnumerable<HerReports> Of(Draft draft) => (For(draft.Herd), HerReports.Of(draft)) switch
    {
        ("none", _) => [],
        ("all", var all) => all,
        ("asked", var all) => all.Where(IsAsked),
        var (words, all) => all.IntersectBy(NumbersOf(words)!, her => her.Main.Animal.Number, StringComparer.Ordinal),
    };

    private static string[]? NumbersOf(string words) => words is "all" or "asked" or "none" ? null : words.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Ready, On course or Ask at any session, a danger, a waiver, or a contradiction in her records.</summary>
    private static bool IsAsked(HerReports her) => her.InCalf != InCalf.NotTold
        || her.All.Any(report => report.Animal.Answer is Answer.Ready or Answer.OnCourse or Answer.Ask || report.Animal.Rules.Any(rule => rule.Waiver is not null))
        || her.Main.On.Herd.Doubted.OfType<Contradictions>().Any(doubt => doubt.Entries.Any(entry => entry.Animal == her.Main.Animal.Animal));
}
