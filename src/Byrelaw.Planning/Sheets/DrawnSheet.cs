using Byrelaw.Records.Ledger;

namespace Byrelaw.Planning.Sheets;

/// <summary>A paper with boxes, for one morning, session and kind of work: what stands on it is in doubt until it is on record.</summary>
/// <param name="Morning">What is done.</param>
/// <param name="Rows">Its rows, each with a box.</param>
public sealed record DrawnSheet(MorningSheet Morning, ImmutableArray<DrawnRow> Rows)
{
    /// <summary>Kinds of the safety rules that are not written down up to the day before: then nobody has a box for a hormone, and only devices come out.</summary>
    public ImmutableArray<ShortKind> Short { get; init; } = [];

    /// <summary>Sheets of the same morning, session and work that it makes void.</summary>
    public ImmutableArray<string> Replaces { get; init; } = [];

    /// <summary>The letter of its work in the ledger: H hormones and devices, S scans and scores, L samples for a laboratory.</summary>
    public string Work => LetterOf(Morning.Work);

    /// <summary>The letter of a kind of work.</summary>
    public static string LetterOf(SheetWork work) => work switch
    {
        SheetWork.Hormones => "H",
        SheetWork.Scans => "S",
        SheetWork.Samples => "L",
        _ => "T",
    };

    /// <summary>As the ledger has it.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="written">The day on which it is written.</param>
    /// <param name="programme">The programme's file.</param>
    public Sheet InLedger(string number, LocalDate written, string programme) => new(
        number, Morning.Date, written, Morning.Session.Number, Work, Replaces, [.. Rows.Select(row => new SheetRow(row.Row, row.Number, null, row.Writes))])
    {
        Programme = programme,
    };
}

/// <summary>A row of such a paper.</summary>
/// <param name="Row">Its number there, from 1.</param>
/// <param name="Number">The animal's number.</param>
/// <param name="Writes">What it would write.</param>
public sealed record DrawnRow(int Row, string Number, ImmutableArray<SheetEntry> Writes)
{
    /// <summary>The animal; null for one of an earlier sheet that the herd does not have.</summary>
    public SheetAnimal? Who { get; init; }

    /// <summary>What is given, or whose device comes out; null for other work.</summary>
    public HormoneRow? Hormone { get; init; }

    /// <summary>What is found out; null for other work.</summary>
    public FindingRow? Finding { get; init; }

    /// <summary>Whether she stands there for whoever is left out.</summary>
    public bool IsSpare { get; init; }

    /// <summary>The row of an earlier sheet of the same morning, which is void, and on which she is not any more; null for none. What was done to her is to be said here.</summary>
    public string? TakenOff { get; init; }

    /// <summary>Whether she is given something: else a device comes out, or something is found out, or she was taken off.</summary>
    public bool IsGiven => Hormone is { IsGiven: true } && TakenOff is null;
}
