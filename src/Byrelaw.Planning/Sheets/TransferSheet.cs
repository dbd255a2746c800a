namespace Byrelaw.Planning.Sheets;

/// <summary>A day of transfer: the run sheet, without embryos as yet.</summary>
public sealed record TransferSheet(LocalDate Date, NamedSession Session, InCalfOnDay InCalf, LocalDate? RecordsEnd) : MorningSheet(Date, Session, InCalf, RecordsEnd)
{
    /// <summary>Those who are named and fit that day by a heat that is expected of them.</summary>
    public ImmutableArray<TransferRow> Rows { get; init; } = [];

    /// <summary>Spares that fit the day by the same rule, the best first: of those who stand by on the sheets of hormones, for nobody else is ready then.</summary>
    public ImmutableArray<TransferRow> Spares { get; init; } = [];

    /// <summary>Those who are watched for a heat of their own, and the heats that fit this day.</summary>
    public ImmutableArray<SheetAnimal> Watched { get; init; } = [];

    /// <summary>Those who would stand on it once what is missing is found out.</summary>
    public ImmutableArray<NamedAnimal> ToAsk { get; init; } = [];

    /// <summary>The heats that fit this day, in order.</summary>
    public ImmutableArray<LocalDate> Heats { get; init; } = [];

    /// <inheritdoc/>
    public override SheetWork Work => SheetWork.Transfer;

    /// <inheritdoc/>
    public override int Animals => Rows.Length + Spares.Length;
}

/// <summary>One recipient on a day of transfer.</summary>
/// <param name="Who">She.</param>
/// <param name="Method">How she is made ready.</param>
/// <param name="Start">Her own day 0.</param>
/// <param name="Heats">Heats that are expected of her and fit the day, in order; at least one.</param>
public sealed record TransferRow(SheetAnimal Who, string Method, LocalDate Start, ImmutableArray<LocalDate> Heats);
