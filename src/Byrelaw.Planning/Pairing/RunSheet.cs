using Byrelaw.Records.Ledger;

namespace Byrelaw.Planning.Pairing;

/// <summary>The paper of a day of transfer: pairs in the order of the race, then those who wait, then whoever stood on an earlier one and does not any more.</summary>
/// <param name="Day">The day.</param>
/// <param name="Rows">Its rows, each with a box.</param>
public sealed record RunSheet(DayOfTransfer Day, ImmutableArray<RunRow> Rows)
{
    /// <summary>Its letter in the ledger.</summary>
    public const string Work = "T";

    /// <summary>Sheets of the same day that it makes void.</summary>
    public ImmutableArray<string> Replaces { get; init; } = [];

    /// <summary>The kind of event by which a transfer is written down; null where the farm's files have no word for it.</summary>
    public static EventKind? Transfer(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        return vocabulary.Kinds.OfType<EventKind>().FirstOrDefault(kind => kind.Marks == Marks.Transfer);
    }

    /// <summary>Draws it.</summary>
    /// <param name="day">Paired; its files have a word for a transfer.</param>
    /// <param name="race">Numbers in the order of the race; who is not among them comes after.</param>
    /// <param name="earlier">Rows that are open on earlier sheets of the day, which this one makes void.</param>
    public static RunSheet Of(DayOfTransfer day, IReadOnlyList<string> race, IReadOnlyList<OpenRow> earlier)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(earlier);
        var writes = ImmutableArray.Create(new SheetEntry(Transfer(day.Draft.Rulebook.Vocabulary)!.Name));
        var places = race.Select((number, place) => (number, place)).DistinctBy(one => one.number).ToDictionary(one => one.number, one => one.place, StringComparer.Ordinal);
        RunRow[] rows =
        [
            .. day.Pairs.OrderBy(pair => places.GetValueOrDefault(pair.Recipient.Number, int.MaxValue)).Select(pair => new RunRow(0, pair.Recipient.Number, pair.Embryo.Label, writes) { Pair = pair, Recipient = pair.Recipient }),

            // As many wait with a row of their own as could be needed.
            .. day.Waiting.Take(day.Pairs.Length).Select(recipient => new RunRow(0, recipient.Number, null, writes) { Recipient = recipient }),
        ];
        var stands = rows.Select(row => (row.Number, row.Embryo)).ToHashSet();
        var off = earlier.Where(row => row.Row.Animal is { } number && !stands.Contains((number, row.Row.Embryo))).GroupBy(row => (row.Sheet.Number, row.Row.Row))
            .Select(open => new RunRow(0, open.First().Row.Animal!, open.First().Row.Embryo, [.. open.Select(row => row.Entry)]) { TakenOff = $"{open.Key.Number}:{open.Key.Row}" });
        return new RunSheet(day, [.. rows.Concat(off).Select((row, i) => row with { Row = i + 1 })]);
    }

    /// <summary>As the ledger has it.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="written">The day on which it is written.</param>
    /// <param name="programme">The programme's file.</param>
    public Sheet InLedger(string number, LocalDate written, string programme) =>
        new(number, Day.Day, written, Day.Session.Number, Work, Replaces, [.. Rows.Select(row => new SheetRow(row.Row, row.Number, row.Embryo, row.Writes))]) { Programme = programme };
}

/// <summary>A row of it.</summary>
/// <param name="Row">Its number, from 1.</param>
/// <param name="Number">The recipient's number.</param>
/// <param name="Embryo">The embryo's label; null for one who waits.</param>
/// <param name="Writes">What it would write.</param>
public sealed record RunRow(int Row, string Number, string? Embryo, ImmutableArray<SheetEntry> Writes)
{
    /// <summary>The pair; null for one who waits or was taken off.</summary>
    public Pair? Pair { get; init; }

    /// <summary>She; null for one who was taken off.</summary>
    public Recipient? Recipient { get; init; }

    /// <summary>The row of an earlier sheet of the day on which she stood; null for none.</summary>
    public string? TakenOff { get; init; }
}
