namespace Byrelaw.Records.Reading;

/// <summary>
/// A row that is supposed to stand in the book, below its last one. It may be dated after the day the records reach, and moves neither that day nor
/// how far its kind reaches: the farm has written nothing.
/// </summary>
/// <param name="Date">When.</param>
/// <param name="Animal">A number, <c>mob:NAME</c> or <c>herd</c>.</param>
/// <param name="Kind">An event, measure or test.</param>
/// <param name="Value">An amount, an answer or a mob; empty for none.</param>
/// <param name="Unit">The amount's unit; empty for none.</param>
public sealed record SupposedRow(LocalDate Date, string Animal, string Kind, string Value = "", string Unit = "")
{
    /// <summary>Details by their names, such as <c>method</c>.</summary>
    public ImmutableArray<(string Name, string Value)> Details { get; init; } = [];
}

/// <summary>What is supposed of a farm's records.</summary>
public sealed record Supposed
{
    /// <summary>Rows that stand there, in this order.</summary>
    public ImmutableArray<SupposedRow> Rows { get; init; } = [];

    /// <summary>Lines of the events' file that are as if they were not there, such as rows that cannot be read.</summary>
    public IReadOnlySet<int> WithoutLines { get; init; } = new HashSet<int>();

    /// <summary>The rows as a file, under a heading of their own.</summary>
    internal byte[] Text()
    {
        string[] details = [.. Rows.SelectMany(row => row.Details).Select(detail => detail.Name).Distinct(StringComparer.Ordinal)];
        var text = new StringBuilder();
        Write(text, ["date", "animal", "kind", "value", "unit", .. details]);
        foreach (var row in Rows)
        {
            Write(text, [
                NodaTime.Text.LocalDatePattern.Iso.Format(row.Date), row.Animal, row.Kind, row.Value, row.Unit,
                .. details.Select(name => row.Details.FirstOrDefault(detail => detail.Name == name).Value ?? "")]);
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Write(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\r\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
