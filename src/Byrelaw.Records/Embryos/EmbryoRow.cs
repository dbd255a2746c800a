namespace Byrelaw.Records.Embryos;

/// <summary>A row of <c>events.csv</c> that says what became of an embryo: a transfer, or something that is declared <c>of embryos</c>.</summary>
/// <param name="Label">Whose; null where that cannot be read.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Animal">The recipient's place in the herd; -1 where it went into nobody.</param>
/// <param name="Date">When; null where that cannot be read.</param>
/// <param name="Line">Its line, as the herd names it.</param>
public sealed record EmbryoRow(string? Label, EventKind Kind, int Animal, LocalDate? Date, int Line)
{
    /// <summary>Whether it was put into a cow.</summary>
    public bool IsTransfer => Kind.Marks == Marks.Transfer && !IsNotDone;

    /// <summary>Whether its straw was thawed, and it was put into nobody by that row.</summary>
    public bool IsNotDone { get; init; }
}
