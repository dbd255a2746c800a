namespace Byrelaw.Reporting.Words;

/// <summary>Rows that are doubted for what they are, one sentence function for each reason.</summary>
internal static class RowDoubtWords
{
    private const int LinesNamed = 4;

    /// <summary>The rows of one reason.</summary>
    public static SaidDoubt Of(RowsInDoubt doubt, Herd herd)
    {
        ImmutableArray<DoubtRow> rows = [.. doubt.Rows.Select(row => DoubtRow.Of(row, herd))];
        var lines = rows.Select(row => (row.File, row.Line)).Distinct().ToList();
        return Of(doubt, lines.Count, Where(lines)) with { Rows = rows };
    }

    private static SaidDoubt Of(RowsInDoubt doubt, int count, string where) => doubt.Why switch
    {
        RowDoubt.TwoInOne => new("two_rows_in_one",
            count == 1 ? $"One line seems to hold two rows: {where}" : $"{count} lines seem to hold two rows each: {where}",
            $"Anything may have happened to any animal on {Days(doubt.Rows)}.",
            $"Break {(count == 1 ? "the line" : "each line")} where its second row begins."),
        RowDoubt.FileBreaksOff => new("file_breaks_off",
            $"{(count == 1 ? "A file breaks off" : "Files break off")}: {where}",
            doubt.Rows.All(row => row.IsOfAnimals) ? "What it said of the animals is not known." : "What stood below may have been anything, about any animal.",
            "Export it again."),
        RowDoubt.LastCellCut => new("last_cell_cut",
            $"{(count == 1 ? "A file ends" : "Files end")} without the end of a line: {where}",
            "The last cell there may be cut, and is not read.",
            "Look whether the row is whole; if it is, end it with the Enter key and save the file."),
        RowDoubt.CommaInNumber => new("comma_in_number",
            $"{(count == 1 ? "A whole number has a note" : $"{count} whole numbers have notes")} of digits only, as a comma in a number would leave them: {where}",
            $"{(count == 1 ? "That sample was" : "These samples were")} taken, and the result is not known.",
            "Write numbers with a point, such as 4.5."),
        RowDoubt.FarAhead => new("far_ahead",
            $"{(count == 1 ? "A date lies" : $"{count} dates lie")} more than a year after all others: {where}",
            "Such a row may be of any day, and does not say how far the records reach.",
            "Correct the date; if it is right, write “up to” and a day below “records”."),
        RowDoubt.Implausible => new("implausible",
            $"{(count == 1 ? "A value" : "Values")} that no cow can have: {where}",
            $"{(count == 1 ? "It is" : "They are")} not known.",
            "Look at the number and its unit."),
        RowDoubt.BornLongAgo => new("born_long_ago",
            $"{(count == 1 ? "A birth" : $"{count} births")} more than 30 years ago: {where}",
            $"{(count == 1 ? "That birth is" : "These births are")} not known.",
            "Correct the year."),
        RowDoubt.SameSample => new("same_sample",
            $"{(count == 1 ? "A sample of a mob stands" : $"{count} samples of mobs stand")} there twice, with one day, kind and value: {where}",
            "Each counts once.",
            "If it is another pot, write its number into a column “sample”; else take one of the two rows out."),
        RowDoubt.NotForMales => new("not_for_males",
            $"{(count == 1 ? "A row says" : $"{count} rows say")} of a male what only females have: {where}",
            $"{(count == 1 ? "It may" : "Each may")} be about any animal.",
            "Check the number there, and the sex in animals.csv."),
        RowDoubt.SteerAsBull => new("steer_as_bull",
            $"{(count == 1 ? "A row says" : $"{count} rows say")} of a steer that he was put in with cows: {where}",
            $"{(count == 1 ? "It may" : "Each may")} be about any animal.",
            "Check the number there, and the sex in animals.csv."),
        RowDoubt.AfterLeaving => new("after_leaving",
            $"{(count == 1 ? "A row is" : $"{count} rows are")} about an animal that had left: {where}",
            $"{(count == 1 ? "It may" : "Each may")} be about any animal.",
            "Check the number and both dates; if she came back, write a row for that too."),
        RowDoubt.BoughtWithoutDay => new("bought_without_day",
            $"{(count == 1 ? "An animal was bought" : $"{count} animals were bought")}, and nothing says when {(count == 1 ? "she" : "they")} came: {where}",
            $"Nothing is taken to be complete for {(count == 1 ? "her" : "them")}.",
            "Write a row for the day on which each came."),
        RowDoubt.OriginUnreadable => new("origin_unreadable",
            $"Whether {(count == 1 ? "an animal was" : $"{count} animals were")} bought cannot be read, and nothing says when {(count == 1 ? "she" : "they")} came: {where}",
            $"Nothing is taken to be complete for {(count == 1 ? "her" : "them")}.",
            "Write where each comes from; where a file may say it that nobody reads yet, say what stands in that file."),
        RowDoubt.InCalfWhenSheCame => new("in_calf_when_she_came",
            $"{(count == 1 ? "An animal" : $"{count} animals")} joined the herd after a test that found a calf, or may have, and no calving was between: {where}",
            $"That calf did not end on the day {(count == 1 ? "she" : "they")} came: until {(count == 1 ? "she calves or slips it" : "each calves or slips it")}, no test by hand clears {(count == 1 ? "her" : "any of them")}.",
            "Have her tested, not by hand, or write down what became of the calf; if she was here all along, take that row out."),
        RowDoubt.ParityUnreadable => new("parity_unreadable",
            $"{(count == 1 ? "A parity" : "Parities")} that cannot be read, or not of which day {(count == 1 ? "it is" : "they are")}: {where}",
            $"{(count == 1 ? "It" : "They")} may be higher than the calvings on record, so calvings are not known of {(count == 1 ? "her" : "these animals")} on any day.",
            "Write a number from 0 to 20 there, and a day such as 2026-09-01; a blank cell says that her calvings are to be counted."),
        RowDoubt.EndWithoutStart => new("end_without_start",
            $"{(count == 1 ? "A row ends" : $"{count} rows end")} what nothing on record began: {where}",
            "When it began is not known: on any day since the last such end, or since the animal joined or was old enough.",
            $"Write the {(count == 1 ? "row" : "rows")} that began it, such as the bull’s coming."),
        RowDoubt.MobNamedOnce => new("mob_named_once",
            $"{(count == 1 ? "A mob’s name is given to one animal only, and may mean another mob" : $"The names of {count} mobs are given to one animal only each, and may mean other mobs")}: {where}",
            $"Which mob {(count == 1 ? "that" : "each")} row means is not known, nor who was with {(count == 1 ? "that animal" : "those animals")} from then on.",
            "Correct the name; if it is a mob of its own, give it one that is less like another’s."),
        RowDoubt.CalvedAgainSoon => new("calved_again_soon",
            $"{(count == 1 ? "A calving comes" : $"{count} calvings come")} fewer than 200 days after another, or after a service that it cannot be of, or after a row that may be either: {where}",
            $"Whether she calved on {(count == 1 ? "that day" : "those days")} is not known.",
            "Check the number and both dates; a calf lost early is an abortion."),
        _ => throw new ArgumentOutOfRangeException(nameof(doubt), doubt.Why, "a reason without words"),
    };

    /// <summary><c>events.csv lines 12 and 15</c>.</summary>
    private static string Where(IReadOnlyList<(string File, int Line)> lines) => Phrases.And([.. lines.GroupBy(line => line.File, line => line.Line).Select(file =>
        $"{file.Key} {(file.Count() == 1 ? "line" : "lines")} {Lines([.. file.Order()])}")]);

    private static string Lines(IReadOnlyList<int> lines) => lines.Count > LinesNamed
        ? Phrases.FirstOf([.. lines.Select(Text)], LinesNamed)
        : Phrases.And([.. lines.Select(Text)]);

    private static string Text(int line) => line.ToString(CultureInfo.InvariantCulture);

    private static string Days(ImmutableArray<RowInDoubt> rows) => rows.Any(row => row.Day <= Day.Start)
        ? "any day"
        : Phrases.And([.. rows.Select(row => row.Day).Distinct().Order().Select(day => Dates.Long(Day.Date(day)))]);
}
