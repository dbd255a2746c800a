namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with whom a row is about.</summary>
internal static class AnimalProblems
{
    public static Diagnostic NoAnimal(RowText row, int cell) => row.Problem(
        cell, "R0131", Severity.Error,
        "this row names no animal", "expected an animal's number, `mob:` and a mob's name, or `herd`");

    public static Diagnostic NoNumber(RowText row, int cell) => row.Problem(
        cell, "R0131", Severity.Error, "this row names no animal", "expected an animal's number");

    public static Diagnostic UnknownAnimal(RowText row, int cell, string animalsFile, string? nearest) => row.Problem(
        cell, "R0132", Severity.Error,
        $"there is no animal `{row.Cells[cell].Value}` in {animalsFile}",
        "expected a number that stands there, `mob:` and a mob's name, or `herd`",
        nearest is null ? null : $"perhaps `{nearest}` is meant");

    public static Diagnostic DuplicateAnimal(RowText row, int cell, int firstLine) => row.Problem(
        cell, "R0133", Severity.Error,
        $"`{row.Cells[cell].Value}` stands on line {firstLine} already", "expected each animal once",
        "correct one of the numbers or remove a line: what the two say differently counts as not known");

    public static Diagnostic ReservedNumber(RowText row, int cell) => row.Problem(
        cell, "R0134", Severity.Error,
        $"`{row.Cells[cell].Value}` cannot be an animal's number",
        "expected a number that is not `herd` and does not start with `mob:`",
        "give her another number: in events.csv these words stand for all animals, or for all of a mob");

    public static Diagnostic UnknownMob(RowText row, int cell, string mob, string? nearest) => row.Problem(
        cell, "R0135", Severity.Error,
        $"no animal is ever in the mob `{mob}`", "expected a mob that stands under `mob` in animals.csv, or that a `mob` row moves animals to",
        nearest is null ? null : $"perhaps `mob:{nearest}` is meant");

    public static Diagnostic NoMobName(RowText row, int cell) => row.Problem(
        cell, "R0136", Severity.Error, "`mob:` without a name", "expected the mob's name after it, such as `mob:River`");
}
