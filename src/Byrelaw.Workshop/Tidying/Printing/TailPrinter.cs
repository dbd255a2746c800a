namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>What follows a condition's subject, in the one order: whose, when, from how many, and then the demand.</summary>
internal static class TailPrinter
{
    /// <summary>All of it, with a space or a comma before each part.</summary>
    /// <param name="tails">In the order of writing.</param>
    /// <param name="demandFirst">Whether the demand stands before how many animals it takes: a count in her mob ends with those.</param>
    public static string Print(ImmutableArray<TailSyntax> tails, bool demandFirst)
    {
        var text = "";
        var isAfterAnimals = false;
        foreach (var tail in tails.OrderBy(tail => Rank(tail, demandFirst)))
        {
            var isAnimals = tail is FromAnimalsSyntax;
            text += (isAnimals || isAfterAnimals ? ", " : " ") + Print(tail);
            isAfterAnimals = isAnimals;
        }

        return text;
    }

    /// <summary>A day, or the name of one.</summary>
    public static string Print(DateReferenceSyntax date) => date.Date is { } day ? Words.Date(day) : Words.Name(date);

    private static int Rank(TailSyntax tail, bool demandFirst) => tail switch
    {
        OfHerMobSyntax or OfTheLastSyntax or ApartSyntax => 0,
        WindowSyntax => 1,
        FromAnimalsSyntax => demandFirst ? 4 : 2,
        _ => 3,
    };

    private static string Print(TailSyntax tail) => tail switch
    {
        InTheLastSyntax last => $"in the last {Words.Duration(last.Length)}",
        AgoSyntax ago => $"{DemandPrinter.Print(ago.Compare)} ago",
        BeforeDateSyntax before => $"in the {Words.Duration(before.Length)} before {Print(before.Date)}",
        SinceLastSyntax since => $"since last {Words.Either(since.Kinds)}",
        FromAfterLastSyntax { IsDayOf: true } from => $"from day {Words.Number(from.Wait.Count)} of last {Words.Either(from.Kinds)}",
        FromAfterLastSyntax from => $"from {Words.Duration(from.Wait)} after last {Words.Either(from.Kinds)}",
        SinceDateSyntax since => $"since {Print(since.Date)}",
        BeforeDaySyntax before => $"before {Print(before.Day)}",
        DaysAfterSyntax after => $"in the {Words.Duration(after.Length)} after {Print(after.Day)}",
        EverSyntax => "ever",
        CompareSyntax compare => DemandPrinter.Print(compare),
        IsSyntax { Values: [var value] } @is => $"is {Not(@is.Not)}{Print(value)}",
        IsSyntax @is => $"is {Not(@is.Not)}one of {string.Join(", ", @is.Values.Select(Print))}",
        RecordedSyntax recorded => $"is {Not(recorded.Not)}recorded",
        TopSyntax top => $"{Not(top.Not)}in the top {Words.Number(top.Percent)}% of {Print(top.Group)}{(top.WithValue ? " with a value" : "")}",
        ApartSyntax apart => $"{DemandPrinter.Print(apart.Compare)} apart",
        OfHerMobSyntax => "of her mob",
        OfTheLastSyntax last => $"of the last {Words.Number(last.Count)} results",
        FromAnimalsSyntax from => $"from at least {Words.Number(from.Count)} {(from.Count.Value == 1 ? "animal" : "animals")}",
        _ => throw new NotSupportedException($"{tail.GetType().Name} has no printed form."),
    };

    private static string Print(WindowDaySyntax day) => day.Date is { } date ? Words.Date(date) : (day.IsLast ? "last " : "") + Words.Either(day.Names);

    private static string Print(ValueSyntax value) =>
        value.Date is { } day ? Words.Date(day) : value.Number is null ? Words.Name(value) : value.Text;

    private static string Print(HerdGroup group) => group switch
    {
        HerdGroup.Cows => "cows",
        HerdGroup.Heifers => "heifers",
        _ => "the herd",
    };

    private static string Not(bool not) => not ? "not " : "";
}
