namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>What happens to files between a yard and a report. Each gives the same records with less in them that can be relied on.</summary>
/// <remarks>
/// Where several accidents befall one file, each is drawn on its own. What no reader can tell is not here: a cell that becomes
/// another right one, and a row that is gone with its line end. <see cref="LostRowsTests"/> counts what those do.
/// </remarks>
internal static class FileGarblings
{
    private const int Date = 0;
    private const int Animal = 1;
    private const int Kind = 2;
    private const int Value = 3;

    public static Gen<RecordFiles?> SmudgeACellOfAnEvent(RecordFiles files) =>
        OnAnEvent(files, cells =>
            from column in Gen.Int[0, cells.Length - 1]
            from smudged in Smudged(cells[column])
            select cells[column].Length == 0 ? null : RecordFiles.Line(With(cells, column, smudged)));

    public static Gen<RecordFiles?> BlankACellOfAnEvent(RecordFiles files) =>
        OnAnEvent(files, cells =>
            from column in Gen.Int[0, cells.Length - 1]
            select cells[column].Length == 0 ? null : RecordFiles.Line(With(cells, column, "")));

    /// <summary>Not the mob, the parity and the number: a blank one of these says another thing (no mob; count the calvings; see the next).</summary>
    public static Gen<RecordFiles?> SmudgeACellOfAnAnimal(RecordFiles files) =>
        from i in Gen.Int[1, files.Animals.Length - 1]
        let cells = RecordFiles.Cells(files.Animals[i])
        from column in Gen.Int[1, cells.Length - 1]
        from smudged in Smudged(cells[column])
        select cells[column].Length == 0 ? null : files with { Animals = files.Animals.SetItem(i, RecordFiles.Line(With(cells, column, smudged))) };

    /// <summary>The machine stopped while it wrote: within a row, before its line end.</summary>
    public static Gen<RecordFiles?> CutTheEvents(RecordFiles files) => Cut(files.Events).Select(events => events is null ? null : files with { Events = events.Value });

    public static Gen<RecordFiles?> CutTheAnimals(RecordFiles files) => Cut(files.Animals).Select(animals => animals is null ? null : files with { Animals = animals.Value });

    /// <summary>A line end is lost, and two rows are one; often something of the first sticks to the second.</summary>
    public static Gen<RecordFiles?> GlueTwoEvents(RecordFiles files) =>
        from i in Gen.Int[1, files.Events.Length - 2]
        from between in Gen.OneOf("", ",", " ", "ok")
        select (RecordFiles?)(files with { Events = files.Events.RemoveAt(i + 1).SetItem(i, files.Events[i].TrimEnd('\n') + between + files.Events[i + 1]) });

    /// <summary>The year of the days to come.</summary>
    public static Gen<RecordFiles?> TypeAYearToCome(RecordFiles files) =>
        OnAnEvent(files, cells =>
            from years in Gen.OneOf(8, 10, 70)
            select LocalDatePattern.Iso.Parse(cells[Date]) is { Success: true, Value: var day }
                ? RecordFiles.Line(With(cells, Date, LocalDatePattern.Iso.Format(day.PlusYears(years))))
                : null);

    /// <summary>An import that ran twice, of one row or of all.</summary>
    public static Gen<RecordFiles?> ImportTwice(RecordFiles files) =>
        from i in Gen.Int[1, files.Events.Length - 1]
        from all in Gen.Int[0, 9]
        select (RecordFiles?)(files with { Events = all == 0 ? files.Events.AddRange(files.Events.Skip(1)) : files.Events.Insert(i, files.Events[i]) });

    /// <summary>4.5 typed as 4,5, in a file that parts its cells by commas.</summary>
    public static Gen<RecordFiles?> TypeADecimalComma(RecordFiles files) =>
        OnAnEvent(files, cells => Gen.Const(
            cells[Value].Contains('.', StringComparison.Ordinal) ? RecordFiles.Line(With(cells, Value, cells[Value].Replace('.', ','))) : null));

    /// <summary>Half of her rows under her number with a zero before it, or with a space within, as two programs write it.</summary>
    public static Gen<RecordFiles?> SplitAnAnimal(RecordFiles files) =>
        from i in Gen.Int[1, files.Animals.Length - 1]
        from part in Gen.Int[0, 2]
        let number = RecordFiles.Cells(files.Animals[i])[0]
        from other in Gen.OneOf("0" + number, "00" + number, number + "\u200b", number.Length > 2 ? number[..2] + " " + number[2..] : "0" + number)
        select (RecordFiles?)new RecordFiles(
            files.Animals.Insert(i + 1, RecordFiles.Line(With(RecordFiles.Cells(files.Animals[i]), 0, other))),
            [.. files.Events.Select((line, row) => RecordFiles.Cells(line) is var cells && cells[Animal] == number && row % 3 != part
                ? RecordFiles.Line(With(cells, Animal, other))
                : line)]);

    /// <summary>A quotation mark typed, or two, in rows near each other: at the start of a cell or at its end. What stands between them is one cell to whoever reads RFC 4180.</summary>
    public static Gen<RecordFiles?> TypeQuotationMarks(RecordFiles files) =>
        from ofEvents in Gen.Bool
        let lines = ofEvents ? files.Events : files.Animals
        from i in Gen.Int[1, lines.Length - 1]
        from apart in Gen.Int[0, 3]
        from first in Marked(lines[i])
        from second in Marked(lines[Math.Min(i + apart, lines.Length - 1)])
        let one = lines.SetItem(i, first)
        let typed = apart == 0 || i + apart >= lines.Length ? one : one.SetItem(i + apart, second)
        select (RecordFiles?)(ofEvents ? files with { Events = typed } : files with { Animals = typed });

    private static Gen<string> Marked(string line) =>
        from cell in Gen.Int[0, RecordFiles.Cells(line).Length - 1]
        from way in Gen.Int[0, 3]
        let cells = RecordFiles.Cells(line)
        select string.Join(',', With(cells, cell, way switch { 0 => "\"", 1 => cells[cell] + "\"", _ => "\"" + cells[cell] })) + "\n";

    /// <summary>Her number, or his, cannot be read any more.</summary>
    public static Gen<RecordFiles?> LoseANumber(RecordFiles files) =>
        from i in Gen.Int[1, files.Animals.Length - 1]
        select (RecordFiles?)(files with { Animals = files.Animals.SetItem(i, RecordFiles.Line(With(RecordFiles.Cells(files.Animals[i]), 0, ""))) });

    /// <summary>A heading renamed: what stood below it is read no more.</summary>
    public static Gen<RecordFiles?> RenameAColumn(RecordFiles files) =>
        from ofEvents in Gen.Bool
        let heading = RecordFiles.Cells(ofEvents ? files.Events[0] : files.Animals[0])
        from column in Gen.Int[0, heading.Length - 1]
        let renamed = RecordFiles.Line(With(heading, column, heading[column] + " old"))
        select (RecordFiles?)(ofEvents ? files with { Events = files.Events.SetItem(0, renamed) } : files with { Animals = files.Animals.SetItem(0, renamed) });

    /// <summary>A word for a kind that no rule file has.</summary>
    public static Gen<RecordFiles?> SayAKindOtherwise(RecordFiles files) =>
        from i in Gen.Int[1, files.Events.Length - 1]
        let kind = RecordFiles.Cells(files.Events[i])[Kind]
        from every in Gen.Bool
        select kind.Length == 0 ? null : files with
        {
            Events = [.. files.Events.Select((line, row) => RecordFiles.Cells(line) is var cells && (row == i || (every && row > 0 && cells[Kind] == kind))
                ? RecordFiles.Line(With(cells, Kind, "x" + kind))
                : line)],
        };

    /// <summary>Several accidents to one folder.</summary>
    public static Gen<RecordFiles?> Several(RecordFiles files) =>
        Gen.OneOf<Func<RecordFiles, Gen<RecordFiles?>>>(
            SmudgeACellOfAnEvent, BlankACellOfAnEvent, SmudgeACellOfAnAnimal, GlueTwoEvents, TypeAYearToCome, TypeADecimalComma, SayAKindOtherwise).Array[2, 6]
        .SelectMany(ways => ways.Aggregate(
            Gen.Const((RecordFiles?)files), (before, way) => before.SelectMany(one => way(one!).Select(less => (RecordFiles?)(less ?? one)))));

    private static Gen<RecordFiles?> OnAnEvent(RecordFiles files, Func<string[], Gen<string?>> changed) =>
        from i in Gen.Int[1, files.Events.Length - 1]
        from line in changed(RecordFiles.Cells(files.Events[i]))
        select line is null ? null : files with { Events = files.Events.SetItem(i, line) };

    private static Gen<ImmutableArray<string>?> Cut(ImmutableArray<string> lines) =>
        from i in Gen.Int[1, lines.Length - 1]
        from length in Gen.Int[1, Math.Max(1, lines[i].Length - 2)]
        select length >= lines[i].Length - 1 ? (ImmutableArray<string>?)null : [.. lines.Take(i), lines[i][..length]];

    /// <summary>A letter within is not to be read any more, so that nothing right can come of it.</summary>
    private static Gen<string> Smudged(string cell) =>
        cell.Length == 0 ? Gen.Const(cell) : Gen.Int[0, cell.Length - 1].Select(i => cell[..i] + "?" + cell[(i + 1)..]);

    private static string[] With(string[] cells, int column, string text)
    {
        var changed = (string[])cells.Clone();
        changed[column] = text;
        return changed;
    }
}
