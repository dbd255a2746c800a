namespace Byrelaw.Language.Canonical;

/// <summary>What a farm says of one source of its records, the one way. It is part of the records' fingerprint, not of the rulebook's.</summary>
public static class SourceLinesText
{
    /// <summary>The <c>from</c> line and those below it.</summary>
    public static string Of(RecordSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return string.Join("\n",
        [
            From(source),
            .. new[]
            {
                source.Dates switch { DateOrder.DayFirst => "dates day first", DateOrder.MonthFirst => "dates month first", _ => null },
                source.HasDecimalComma ? "decimal comma" : null,
                source.Thousands switch { ',' => "thousands comma", '.' => "thousands point", _ => null },
                source.HasShortYears ? "short years" : null,
            }.OfType<string>(),
            .. source.Columns.SelectMany(Lines),
            .. source.EveryRow.Select(every => $"{Name(every.What)}{(every.Kind is { } kind ? $" of {NameText.Exact(kind.Name)}" : "")} is {NameText.Exact(every.Value)}"),
            .. source.RowsLeftOut.Select(row => $"leave out rows where {NameText.Text(row.Heading)} is {NameText.Text(row.Cell)}"),
            .. source.ColumnsLeftOut.IsEmpty ? Array.Empty<string>() : [$"leave out columns {string.Join(", ", source.ColumnsLeftOut.Select(NameText.Text))}"],
        ]);
    }

    private static string From(RecordSource source) => string.Join(", ", new[]
    {
        $"from {NameText.Text(source.File)}",
        source.IsAde ? "as layout \"ICAR ADE\"" : null,
        source.TimesIn is { } zone ? $"times in {NameText.Text(zone)}" : null,
        source.Sheet is { } sheet ? $"sheet {NameText.Text(sheet)}" : null,
        source.HeadingRows switch
        {
            (1, 1) => null,
            (var first, var last) when first == last => $"headings in row {NumberText.Of(first)}",
            (var first, var last) => $"headings in rows {NumberText.Of(first)} to {NumberText.Of(last)}",
        },
        source.Separator switch { ';' => "separated by semicolons", '\t' => "separated by tabs", '|' => "separated by bars", _ => null },
        source.LettersIn is { } letters ? $"in {letters}" : null,
        source.Rows == SourceRows.Animals ? "a row for each animal" : "a row for each event",
        source.AsAt is { } day ? $"as at {NumberText.Of(day)}" : null,
        source.UpTo is { } until ? $"up to {NumberText.Of(until)}" : null,
    }.OfType<string>());

    private static IEnumerable<string> Lines(SourceColumn column)
    {
        yield return string.Join(", ", new[]
        {
            $"{(column.IsLast ? "last " : "")}{Name(column.What)} in {NameText.Text(column.Heading)}",
            column.Unit is { } unit ? $"in {unit}" : null,
            Times(column.Times),
            column.DatedIn is { } heading ? $"dated in {NameText.Text(heading)}" : column.Dated is { } day ? $"dated {NumberText.Of(day)}" : null,
            column.IsByNumber ? "by number" : column.FoundBy is { } fact ? $"by {NameText.Exact(fact.Name)}" : null,
            column.Blank is { } blank ? blank.SinceLast is { } since ? $"blank is none since last {NameText.Exact(since.Name)}" : "blank is never" : null,
            column.AsAt is { } asAt ? $"as at {NumberText.Of(asAt)}" : null,
        }.OfType<string>());
        foreach (var cell in column.Cells)
        {
            yield return Line(cell);
        }
    }

    private static string Line(CellMeaning cell) => string.Join(", ", new[]
    {
        $"- {NameText.Text(cell.Cell)}{(cell.Where is { } where ? $" where {NameText.Text(where.Heading)} is {NameText.Text(where.Cell)}" : "")} is {Of(cell.Is)}",
        cell.Unit is { } unit ? $"in {unit}" : null,
        Times(cell.Times),
    }.OfType<string>().Concat(cell.Parts.Select(part => $"{Name(part.What)} {(part.Heading is { } heading ? $"in {NameText.Text(heading)}" : $"is {NameText.Exact(part.Value!)}")}")));

    private static string Of(CellIs meaning) => meaning switch
    {
        IsBlank => "blank",
        IsPending => "pending",
        IsLeftOut => "left out",
        IsKind kind => NameText.Exact(kind.Kind.Name) + (kind.Answer is { } answer ? $", {NameText.Exact(answer)}" : ""),
        IsLimit limit => $"{(limit.IsLess ? "less" : "more")} than {NumberText.Of(limit.Limit)}",
        IsValue value => NameText.Exact(value.Text),
        _ => throw new ArgumentException($"no text for {meaning.GetType().Name}", nameof(meaning)),
    };

    private static string Name(SourceTarget target) => target is LandedTarget ? target.Name : NameText.Exact(target.Name);

    private static string? Times(double times) => times == 1 ? null : $"times {NumberText.Of(times)}";
}
