using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with embryos: in their own file, in the pedigree, and with what became of them.</summary>
internal static class EmbryoProblems
{
    /// <param name="row">The row.</param>
    /// <param name="cell">Where its label should stand.</param>
    /// <param name="what">An embryo, or an animal of the pedigree.</param>
    public static Diagnostic NoLabel(RowText row, int cell, string what) => what == "embryo"
        ? row.Problem(cell, "R0501", Severity.Error, "this row names no embryo", "expected its label", "give it a label that no other row has")
        : row.Problem(cell, "R0501", Severity.Error, "this row names no animal", "expected what the animal goes by", $"write the name that the donor or the sire has in {EmbryoBook.EmbryosFile}");

    public static Diagnostic Twice(RowText row, int cell, string what, int firstLine) => row.Problem(
        cell, "R0502", Severity.Error, $"`{row.Cells[cell].Value}` stands on line {firstLine} already", $"expected each {what} once",
        what == "animal" ? "take one of the two out, or correct its name; until then the first is read" : "correct one of the two; until then neither can be used");

    public static Diagnostic UnknownParent(RowText row, int cell, string? nearest) => row.Problem(
        cell, "R0503", Severity.Error, $"there is no animal `{row.Cells[cell].Value}` in the herd's file or in {EmbryoBook.PedigreeFile}", "expected one that stands in either",
        nearest is null ? $"add a row for it to {EmbryoBook.PedigreeFile}" : $"perhaps `{nearest}` is meant");

    public static Diagnostic ParentOfOtherSex(RowText row, int cell, bool isDonor) => row.Problem(
        cell, "R0504", Severity.Error, $"`{row.Cells[cell].Value}` is {(isDonor ? "male" : "female")} on record", isDonor ? "expected a female as the donor" : "expected a male as the sire",
        "correct the animal here, or its sex where it stands");

    public static Diagnostic NotOneOf(RowText row, int cell, string column, params string[] values) => row.Problem(
        cell, "R0505", Severity.Error, $"`{row.Cells[cell].Value}` is not what {column} can be", $"expected {ColumnMap.Listed(values, "or")}, or nothing where it is not known",
        NearestName.OnlyOne(row.Cells[cell].Value, values) is { } near ? $"perhaps `{near}` is meant" : null);

    public static Diagnostic AfterToday(RowText row, int cell, LocalDate today) => row.Problem(
        cell, "R0506", Severity.Error, $"`{row.Cells[cell].Value}` lies after {NodaTime.Text.LocalDatePattern.Iso.Format(today)}", "expected that day or an earlier one",
        "correct the day, or write it down once it is past");

    public static Diagnostic FrozenBeforeCollected(RowText row, int cell) => row.Problem(
        cell, "R0507", Severity.Error, $"frozen on `{row.Cells[cell].Value}`, before it was collected", "expected a day that is not before `collected`", "correct one of the two days");

    public static Diagnostic NotACode(RowText row, int cell, string column, int most) => row.Problem(
        cell, "R0508", Severity.Error, $"`{row.Cells[cell].Value}` is not {(column == "age frozen" ? "an age in days" : $"a {column}")}", column switch
        {
            "stage" => "expected a stage from 1 to 9, as the International Embryo Technology Society numbers them",
            "grade" => "expected a grade from 1 to 4, as the International Embryo Technology Society numbers them",
            _ => $"expected whole days, from 1 to {most}",
        },
        column == "age frozen" ? null : $"what `{row.Cells[cell].Value}` means is for the laboratory to say");

    public static Diagnostic FrozenPoor(RowText row, int cell) => row.Problem(
        cell, "R0509", Severity.Warning, $"frozen, of grade {row.Cells[cell].Value}", "expected grade 1 or 2: poorer ones rarely live through thawing",
        "ask the laboratory whether that is its grade before freezing");

    public static Diagnostic StageAgainstAge(RowText row, int cell, int age) => row.Problem(
        cell, "R0510", Severity.Warning, $"stage {row.Cells[cell].Value} at {age} days old: they lie more than a day apart", "expected a stage that an embryo of that age has",
        "check stage, day and age with the laboratory");

    public static Diagnostic SexAgainstSemen(RowText row, int cell) => row.Problem(
        cell, "R0511", Severity.Warning, $"tested `{row.Cells[cell].Value}`, of semen sexed for the other", "expected the two to agree", "check both with the laboratory");

    public static Diagnostic UnknownEmbryo(RowText row, int cell) => row.Problem(
        cell, "R0512", Severity.Error, $"there is no embryo `{row.Cells[cell].Value}` in {EmbryoBook.EmbryosFile}", "expected a label that stands there",
        "correct the label, or add a row for it; until then any embryo that was to be had on that day may be the one");

    /// <param name="row">The row.</param>
    /// <param name="cell">Where the label stands.</param>
    /// <param name="first">Where the row stands that says so first.</param>
    public static Diagnostic UsedTwice(RowText row, int cell, RecordPlace first) => row.Problem(
        cell, "R0513", Severity.Error, $"`{row.Cells[cell].Value}` was used or discarded on line {first.Line} of {first.File} already", "expected an embryo that was still to be had", "correct the label of one of the two rows");

    public static Diagnostic SeveralHerds(string file) => new(
        "R0516", Severity.Warning, file, 1, 1, 1, "these records hold several herds, and the embryos here are not read: what one herd used another would still offer", "expected the embryos of one herd",
        "keep each herd's records in a folder of its own, with its embryos beside them", "");

    public static Diagnostic NoEmbryo(RowText row, int cell) => row.Problem(
        cell, "R0514", Severity.Error, $"{row.Cells[cell].Value} happens to embryos, and this row names none", "expected `embryo:` and its label in place of an animal", "write it as `embryo:E-17`");

    public static Diagnostic NotOfEmbryos(RowText row, int cell) => row.Problem(
        cell, "R0515", Severity.Error, $"`{row.Cells[cell].Value}` is an embryo, and this happens to animals", "expected an animal's number; of a transfer the embryo stands in the column `embryo`",
        "write her number here; until then it may be any animal's");
}
