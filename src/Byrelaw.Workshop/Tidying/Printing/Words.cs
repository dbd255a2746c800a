namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Single words and amounts the one way. Names stay as people wrote them: they are people's words.</summary>
internal static class Words
{
    /// <summary>A name, its words parted by one space; in quotes where it was.</summary>
    public static string Name(SyntaxNode name) => Name(name.Span);

    /// <summary>Names separated by commas.</summary>
    public static string Names(IEnumerable<SyntaxNode> names) => string.Join(", ", names.Select(Name));

    /// <summary><c>mastitis or metritis</c>.</summary>
    public static string Either(IEnumerable<NameSyntax> kinds) => string.Join(" or ", kinds.Select(Kind));

    /// <summary>A kind with its filters: <c>mating with method natural</c>.</summary>
    public static string Kind(NameSyntax kind) => string.Join(' ', kind.Filters.Select(Filter).Prepend(Name(kind.Named)));

    private static string Filter(FilterSyntax filter)
    {
        var demand = filter switch
        {
            { Compare: { Comparison: Comparison.Exactly } compare } => DemandPrinter.Print(compare)["exactly ".Length..],
            { Compare: { } compare } => DemandPrinter.Print(compare),
            { Values.IsEmpty: true } => "recorded",
            { Values: [var only] } => Name(only.Span),
            _ => $"one of {string.Join(", ", filter.Values.Select(value => Name(value.Span)))}",
        };
        return $"with {Name(filter.Detail)} {(filter.Not ? "not " : "")}{demand}";
    }

    /// <summary>A number without zeros that say nothing.</summary>
    public static string Number(NumberSyntax number) => NumberText.Of(number.Value);

    /// <summary>Two numbers with <c>and</c> between, with as many decimals as the one that needs more: <c>4.0 and 5.5</c>.</summary>
    public static (string Low, string High) Pair(NumberSyntax low, NumberSyntax high)
    {
        var (a, b) = (Number(low), Number(high));
        var decimals = Math.Max(Decimals(a), Decimals(b));
        return (WithDecimals(a, decimals), WithDecimals(b, decimals));
    }

    /// <summary>Year-month-day.</summary>
    public static string Date(DateSyntax date) => NumberText.Of(date.Value);

    /// <summary><c>1 day</c>, <c>56 days</c>.</summary>
    public static string Duration(DurationSyntax length) => $"{Number(length.Count)} {Time(length.Unit, length.Count.Value)}";

    /// <summary><c>6 and 8 days</c>, <c>4 weeks and 3 months</c>.</summary>
    public static string Between(DurationSyntax low, DurationSyntax high) =>
        $"{(low.Unit == high.Unit ? Number(low.Count) : Duration(low))} and {Duration(high)}";

    /// <summary>A unit by its symbol, a unit of time by its word.</summary>
    /// <param name="unit">As written.</param>
    /// <param name="count">How many of it.</param>
    public static string Unit(string unit, double count) =>
        TimeUnitWords.Find(FoldedWords.Of(unit)) is { } time ? Time(time, count) : UnitTable.Find(unit)?.Symbol ?? unit;

    private static string Name(SourceSpan span) => string.Join(
        ' ', LineSplitter.Split(Lexer.Lex(new SourceFile("", span.Text)))[0].Tokens.Select(Word));

    private static string Word(Token token) => token.Kind == TokenKind.Text ? NameText.Text(token.Text) : token.Text;

    private static string Time(TimeUnit unit, double count) =>
        new TimeLength(count == 1 ? 1 : 2, unit).ToString()[2..];

    private static int Decimals(string number) => number.Contains('.', StringComparison.Ordinal) ? number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

    private static string WithDecimals(string number, int decimals)
    {
        var missing = decimals - Decimals(number);
        return missing == 0 ? number : number + (missing == decimals ? "." : "") + new string('0', missing);
    }
}
