using Byrelaw.Records.Building;

namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with whom a row is about.</summary>
internal static class AnimalProblems
{
    private const int MostNamed = 4;

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

    /// <summary>A number that one animal has, but for zeros in front.</summary>
    public static Diagnostic OtherZeros(RowText row, int cell, string animalsFile, string padded) => row.Problem(
        cell, "R0140", Severity.Error,
        $"there is no animal `{row.Cells[cell].Value}` in {animalsFile}, but there is `{padded}`", "expected the number as it stands there, its zeros too", $"write `{padded}`");

    /// <summary>A tag that several animals have: the row is one's of them.</summary>
    public static Diagnostic OneOfSeveral(RowText row, int cell, string tag, IReadOnlyList<string> numbers) => row.Problem(
        cell, "R0139", Severity.Error,
        $"`{tag}` is what {numbers.Count} animals go by: {ColumnMap.Listed([.. numbers.Take(MostNamed)], "and")}{(numbers.Count > MostNamed ? $", and {numbers.Count - MostNamed} more" : "")}", "expected what one animal goes by: nobody can tell whose this row is",
        "read the tags again, and correct them where the animals stand");

    public static Diagnostic DuplicateAnimal(RowText row, int cell, int firstLine) => row.Problem(
        cell, "R0133", Severity.Error,
        $"`{row.Cells[cell].Value}` stands on line {firstLine} already", "expected each animal once",
        "correct one of the numbers or remove a line: what the two say differently counts as not known");

    public static Diagnostic ReservedNumber(RowText row, int cell) => row.Problem(
        cell, "R0134", Severity.Error,
        $"`{row.Cells[cell].Value}` cannot be an animal's number",
        "expected a number that is not `herd` and does not start with `mob:` or `embryo:`",
        "give her another number: in events.csv these words stand for all animals, for all of a mob, or for an embryo");

    public static Diagnostic UnknownMob(RowText row, int cell, string mob, string? nearest) => row.Problem(
        cell, "R0135", Severity.Error,
        $"no animal is ever in the mob `{mob}`", "expected a mob that stands under `mob` in animals.csv, or that a `mob` row moves animals to",
        nearest is null ? null : $"perhaps `mob:{nearest}` is meant");

    /// <summary>A name that one animal alone is given, and that may be a slip for another's, or means cows by a bull's row.</summary>
    public static Diagnostic MobNamedOnce(RowText row, int cell, string mob, string meant) => row.Problem(
        cell, "R0138", Severity.Warning,
        mob == meant ? $"no cow is ever in the mob `{mob}`, and this bull is" : $"no other animal is in the mob `{mob}`, and there is one called `{meant}`",
        mob == meant ? "expected the name of the mob that he is with" : "expected the name of a mob that others are in too, or one that is less like another's",
        mob == meant ? "write it as their own rows do; if he is alone there, give it a name that speaks of no cow, such as `Bull paddock`"
            : $"write `{meant}` if that is meant; if it is a mob of its own, give it a name that nobody takes for the other");

    public static Diagnostic NoMobName(RowText row, int cell) => row.Problem(
        cell, "R0136", Severity.Error, "`mob:` without a name", "expected the mob's name after it, such as `mob:River`");

    public static Diagnostic NotOneAnimal(RowText row, int cell, int firstLine) => row.Problem(
        cell, "R0137", Severity.Error,
        $"`{row.Cells[cell].Value}` cannot be the animal of line {firstLine}: sex or birth differs, though the farm's file says `same animal`", "expected rows that one animal can have",
        "correct one of the two rows, or take that line out of the farm's file");

    /// <summary>A row that can be read, of an animal that it cannot be about.</summary>
    public static Diagnostic WrongAnimal(RowText row, int cell, string kind, string number, in WrongAnimal wrong) => wrong.IsSteer
        ? row.Problem(
            cell, "R0204", Severity.Error,
            $"{kind} of {number}, who is recorded as a steer", "expected a bull: the row may be about any animal",
            "check the number here, and the sex in animals.csv")
        : wrong.Left is { } day
        ? row.Problem(
            cell, "R0215", Severity.Error,
            $"{kind} of {number}, who left on {Doubts.Entries.Iso(day)}", "expected nothing after that day: the row may be about any animal",
            "check her number and both dates; if she came back, write a row for that too")
        : row.Problem(
            cell, "R0204", Severity.Error,
            $"{kind} of {number}, who is recorded as male", "expected a female: the row may be about any animal",
            "check the number here, and the sex in animals.csv");
}
