namespace Byrelaw.Judging.Explaining;

/// <summary>What more is on record of an entry, as evidence shows it.</summary>
internal static class DetailText
{
    /// <summary><c>method hand</c>, <c>method natural, sire 90</c>; null where nothing is on record.</summary>
    public static string? Of(Herd herd, Kind kind, int line)
    {
        if (kind.Details.IsEmpty)
        {
            return null;
        }

        var said = new List<string>();
        foreach (var cell in herd.Details.Of(line))
        {
            var detail = kind.Details[cell.Detail];
            said.Add($"{detail.Name} {(cell.State == FactState.Unreadable ? "not readable" : Of(detail, cell))}");
        }

        return said.Count == 0 ? null : string.Join(", ", said);
    }

    private static string Of(EntryDetail detail, in DetailCell cell) => detail.Type switch
    {
        FactType.Number => ValueText.Write(cell.Number),
        FactType.Amount => ValueText.Write(cell.Number, detail.Unit!.Symbol),
        FactType.Date => ValueText.WriteDay((int)cell.Number),
        _ => cell.Text ?? "",
    };
}
