namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a result.</summary>
internal static class ValueProblems
{
    public static Diagnostic NotANumber(RowText row, int cell) => row.Problem(
        cell, "R0151", Severity.Error,
        $"`{row.Cells[cell].Value}` is not a number", "expected a number such as `4.5`, `<3` or `>10`, or `pending`",
        NumberAdvice.For(row.Cells[cell].Value) ?? "write `pending` until the result is there");

    public static Diagnostic CommaInNumber(RowText row, int cell) => row.Problem(
        cell, "R0150", Severity.Warning,
        $"`{row.Cells[cell].Value}` and then a note `{row.Cells[cell + 1].Value}`, as a comma in a number would leave them", $"expected a number such as `{row.Cells[cell].Value}.{row.Cells[cell + 1].Value}`, or a note in words",
        "write a point in the number; or a word in the note, if it is one");

    public static Diagnostic SameSample(RowText row, int cell) => row.Problem(
        cell, "R0216", Severity.Warning,
        "this sample of the mob stands there already, with the same day, kind and value", "expected each pot once",
        "if it is another pot, write its number into a column `sample`; else take one of the two rows out");

    public static Diagnostic Implausible(RowText row, int cell, string name, Scale plausible, Unit? unit) => row.Problem(
        cell, "R0213", Severity.Error,
        $"`{row.Cells[cell].Value}` cannot be the {name} of a cow", $"expected {Number(plausible.From)} to {Number(plausible.To)}{(unit is null ? "" : $" {unit.Symbol}")}, what the rule files say is plausible",
        "look at the number and its unit; until then the value is not known");

    public static Diagnostic Negative(RowText row, int cell, string measure, double lowest = 0) => row.Problem(
        cell, "R0152", Severity.Error,
        $"`{row.Cells[cell].Value}` is less than {(lowest < 0 ? "can be" : "nothing")}", $"expected {measure} of {Number(lowest)} or more",
        lowest < 0 ? null : "remove the `-` if it is only a dash");

    public static Diagnostic OffScale(RowText row, int cell, string name, Scale scale) => row.Problem(
        cell, "R0153", Severity.Error,
        $"`{row.Cells[cell].Value}` is off the scale", $"expected {name} from {Number(scale.From)} to {Number(scale.To)}",
        "a score of another scale is not turned into this one");

    public static Diagnostic NoUnit(RowText row, int cell, MeasureKind measure) => row.Problem(
        cell, "R0154", Severity.Error,
        "a number without a unit", $"expected {measure.Name} in `{measure.Unit!.Symbol}`, or in a unit that can be turned into it",
        "write the laboratory's unit after the number");

    public static Diagnostic UnknownUnit(RowText row, int cell, string unit, Unit declared) => row.Problem(
        cell, "R0155", Severity.Error,
        $"`{unit}` is not a unit that is known", $"expected `{declared.Symbol}`, or a unit that can be turned into it", Alike(declared));

    public static Diagnostic OtherKindOfUnit(RowText row, int cell, string unit, string subject, Unit declared) => row.Problem(
        cell, "R0156", Severity.Error,
        $"`{unit}` cannot be turned into `{declared.Symbol}`", $"expected {subject} in `{declared.Symbol}`, or in a unit that can", Alike(declared));

    public static Diagnostic NoMolarMass(RowText row, int cell, string unit, MeasureKind measure) => row.Problem(
        cell, "R0157", Severity.Error,
        $"`{unit}` cannot be turned into `{measure.Unit!.Symbol}` without a molar mass",
        $"expected {measure.Name} in `{measure.Unit.Symbol}`",
        $"ask the laboratory for the result in `{measure.Unit.Symbol}`, or declare the measure's `molar mass` in g/mol, from a source that you trust");

    public static Diagnostic UnitNotTaken(RowText row, int cell, string unit, Kind kind) => row.Problem(
        cell, "R0158", Severity.Error,
        $"a unit, `{unit}`", $"expected none: {kind.Name} has no unit",
        kind is MeasureKind { Scale: { } scale } ? $"remove it; the scale is from {Number(scale.From)} to {Number(scale.To)}" : "remove it");

    public static Diagnostic TwoUnits(RowText row, int cell, string inValue) => row.Problem(
        cell, "R0159", Severity.Error,
        $"a second unit: the value says `{inValue}` already", "expected one unit", "remove one of the two");

    public static Diagnostic ValueOnEvent(RowText row, int cell, Kind kind, Kind? other = null) => row.Problem(
        cell, "R0161", Severity.Error,
        $"a value, `{row.Cells[cell].Value}`", $"expected none: {kind.Name} is an event, it happened or it did not",
        other is null ? "write remarks in the column `note`; what did not happen has no row" : $"if it was {other.Name}, write that as its kind; until then {other.Name} is not known of her on that day");

    public static Diagnostic UndeclaredAnswer(RowText row, int cell, TestKind test, string? nearest) => row.Problem(
        cell, "R0162", Severity.Error,
        $"`{row.Cells[cell].Value}` is not an answer of {test.Name}",
        $"expected {ColumnMap.Listed([.. test.Answers, "pending"], "or")}",
        nearest is null ? "write it in full; until then the result counts as not known" : $"perhaps `{nearest}` is meant; until then the result counts as not known");

    public static Diagnostic MoveNowhere(RowText row, int cell) => row.Problem(
        cell, "R0163", Severity.Error, "a move that names no mob", "expected the mob's name as the value, such as `River`");

    /// <summary>R0163: a cell of the animals' file in which something stands, and no mob's name.</summary>
    public static Diagnostic NoMob(RowText row, int cell) => row.Problem(
        cell, "R0163", Severity.Error, "no mob's name", "expected the mob's name, such as `River`, or nothing");

    public static Diagnostic NothingBeyond(RowText row, int cell, MeasureKind measure, double lowest) => row.Problem(
        cell, "R0164", Severity.Error,
        $"no value is `{row.Cells[cell].Value}`",
        measure.Scale is { } scale ? $"expected {measure.Name} from {Number(scale.From)} to {Number(scale.To)}" : $"expected {measure.Name} of {Number(lowest)} or more");

    /// <summary>Names the other units of the same quantity; null where there are none.</summary>
    private static string? Alike(Unit declared)
    {
        string[] others = [.. UnitTable.All.Where(unit => unit.Quantity == declared.Quantity && unit != declared).Select(unit => unit.Symbol)];
        return others.Length == 0 ? null : $"{ColumnMap.Listed(others, "and")} can be turned into it";
    }

    private static string Number(double number) => number.ToString(CultureInfo.InvariantCulture);
}
