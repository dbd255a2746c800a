namespace Byrelaw.Planning.Sheets;

/// <summary>A morning on which something is given, or a device goes in or comes out.</summary>
public sealed record HormoneSheet(LocalDate Date, NamedSession Session, InCalfOnDay InCalf, LocalDate? RecordsEnd) : MorningSheet(Date, Session, InCalf, RecordsEnd)
{
    /// <summary>Who is treated, and those who are begun and get nothing but their device out.</summary>
    public ImmutableArray<HormoneRow> Rows { get; init; } = [];

    /// <summary>For whoever is left out, the best first.</summary>
    public ImmutableArray<HormoneRow> Spares { get; init; } = [];

    /// <summary>Those who would be treated that morning once what is missing is found out, and not before.</summary>
    public ImmutableArray<NamedAnimal> ToAsk { get; init; } = [];

    /// <inheritdoc/>
    public override SheetWork Work => SheetWork.Hormones;

    /// <inheritdoc/>
    public override int Animals => Rows.Length + Spares.Length;
}

/// <summary>One animal on such a morning.</summary>
/// <param name="Who">She.</param>
/// <param name="Method">Her method.</param>
/// <param name="Start">Her own day 0.</param>
/// <param name="Day">The day of the method that this morning is, counted from her own day 0.</param>
/// <param name="Steps">What the method does on it.</param>
public sealed record HormoneRow(SheetAnimal Who, Method Method, LocalDate Start, int Day, ImmutableArray<MethodStep> Steps)
{
    /// <summary>Why she is given nothing; null for one who stands to be treated.</summary>
    public NotGiven? NotGiven { get; init; }

    /// <summary>Whether she stands to be treated.</summary>
    public bool IsGiven => NotGiven is null;

    /// <summary>Whether she is treated as a donor.</summary>
    public bool IsDonor { get; init; }

    /// <summary>Whether the steps of day 0 are done once more, because she was not seen in heat in time.</summary>
    public bool IsSecondChance { get; init; }

    /// <summary>The step as it goes on record: a second chance is a new day 0 of hers.</summary>
    public int StepOnRecord => IsSecondChance ? 0 : Day;

    /// <summary>Whether a device of hers comes out, whatever else is said of her.</summary>
    public bool DeviceComesOut => Steps.Any(step => step.Device == DeviceMove.Out);

    /// <summary>Whether a device of hers goes in.</summary>
    public bool DeviceGoesIn => IsGiven && Steps.Any(step => step.Device == DeviceMove.In);
}

/// <summary>Why one who is begun is given nothing that morning.</summary>
/// <param name="Begun">Who is in no number any more, and why; null where she was, and the safety rules for treatment do not surely hold on that morning.</param>
/// <param name="DeviceSince">Where nothing but a device that should be out is told of her: since when it is in.</param>
public sealed record NotGiven(BegunAnimal? Begun, LocalDate? DeviceSince = null);
