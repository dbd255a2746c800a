using Byrelaw.Language.Diagnostics;

namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Whom a row of <c>events.csv</c> is about.</summary>
public enum Whom
{
    One,
    Mob,
    Herd,
    CannotBeRead,
}

/// <summary>The cells of one row of <c>events.csv</c>, each read for itself.</summary>
/// <param name="Row">The row.</param>
/// <param name="Line">Its line.</param>
/// <param name="Day">Null where the date cannot be read.</param>
/// <param name="Whom">Whom it is about.</param>
/// <param name="Animal">Her place, for one animal.</param>
/// <param name="Mob">Folded, for a mob.</param>
/// <param name="Kind">Null where it cannot be read or is not declared.</param>
public sealed record RowAsRead(EventRow Row, int Line, int? Day, Whom Whom, int Animal, string Mob, Kind? Kind)
{
    public static RowAsRead Read(EventRow row, int line, IReadOnlyDictionary<string, int> places, Vocabulary vocabulary)
    {
        var whom = Whom.CannotBeRead;
        var mob = "";
        if (places.TryGetValue(row.Animal, out var animal))
        {
            whom = Whom.One;
        }
        else if (row.Animal == "herd")
        {
            whom = Whom.Herd;
        }
        else if (row.Animal.StartsWith("mob:", StringComparison.Ordinal) && row.Animal.Length > 4)
        {
            whom = Whom.Mob;
            mob = NameFolding.Fold(row.Animal[4..]);
        }

        var kind = vocabulary.FindKind(row.Kind);
        return new RowAsRead(row, line, CellReading.Day(row.Date), whom, animal, mob, kind)
        {
            Like = kind is null && NearestName.OnlyOne(row.Kind, vocabulary.Names.Select(name => name.Text)) is { } like ? vocabulary.FindKind(like) : null,
        };
    }

    /// <summary>The kind whose name is spelt most like the word that stands there; null for none.</summary>
    public Kind? Like { get; init; }

    /// <summary>The other cells say what they should: an answer not declared is a result not known, not an unreadable row.</summary>
    public bool RestCanBeRead => EntryCanBeRead && ValueCanBeRead;

    /// <summary>The day of entry is blank or a date.</summary>
    public bool EntryCanBeRead => Row.Recorded.Length == 0 || CellReading.Day(Row.Recorded) is not null;

    private bool ValueCanBeRead => Kind switch
    {
        MeasureKind measure => CellReading.Amount(measure, Row.Value, Row.Unit) is not null,
        EventKind { IsMobMove: true } => Row.Value.Length > 0 && !Row.Value.Contains('?', StringComparison.Ordinal),
        _ => true,
    };

    public Happening HappeningOf(int animal) => Kind switch
    {
        MeasureKind measure => new Happening(animal, measure, Day!.Value, Line, Values: CellReading.Amount(measure, Row.Value, Row.Unit)!.Value),
        TestKind test => new Happening(animal, test, Day!.Value, Line, Answer: AnswerOf(test)),
        EventKind { IsMobMove: true } move => new Happening(animal, move, Day!.Value, Line, Mob: NameFolding.Fold(Row.Value)),
        _ => new Happening(animal, Kind!, Day!.Value, Line),
    };

    /// <summary>The result as nobody's; an amount that cannot be read is not known.</summary>
    public Happening WhateverResultOf() => Kind is MeasureKind measure
        ? new Happening(-1, measure, Day!.Value, Line, Values: CellReading.Amount(measure, Row.Value, Row.Unit) ?? ValueRange.Any)
        : HappeningOf(-1);

    private int AnswerOf(TestKind test)
    {
        for (var i = 0; i < test.Answers.Length; i++)
        {
            if (NameFolding.Fold(test.Answers[i]) == NameFolding.Fold(Row.Value))
            {
                return i;
            }
        }

        return -1;
    }
}
