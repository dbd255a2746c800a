using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>A morning of hormones and devices.</summary>
internal static class HormonePart
{
    public static void Add(DocumentBuilder part, Plan plan, HormoneSheet sheet)
    {
        var (given, held) = (sheet.Rows.Where(row => row.IsGiven).ToList(), sheet.Rows.Where(row => !row.IsGiven).ToList());
        part.Sentence(StopWords.Of(plan) is { } stop ? Wording.Bold(stop) : "")
            .Sentence(Wording.Bold("No box, no needle."))
            .Sentence(Count(sheet, given.Count))
            .Bullets(Cautions(sheet))
            .Sentence(SheetWords.InCalf(sheet, sheet.Rows.Concat(sheet.Spares).Select(row => row.Who.Number)))
            .Table(Rows(plan, sheet, "To treat, by mob", given))
            .Table(SheetRows.Table(plan, "Begun, and given nothing: a device comes out whatever the answer is", ["her day", "device", "why"], held, row => row.Who,
                row => [Day(row), row.DeviceComesOut ? "comes out" : "none due", Why(row)]))
            .Table(Rows(plan, sheet, SheetWords.Spare(sheet, sheet.Spares.Length), sheet.Spares, byMob: false));
        if (!sheet.ToAsk.IsEmpty)
        {
            part.Heading(2, "To ask about first, and not treated before").Bullets(SheetRows.ToAsk(sheet.ToAsk, sheet.Date.Year));
        }

        part.Sentence(given.Count == 0 ? "" : "The sheet of that morning has a box for each of them, and blanks for who ordered it, who gave it, product, batch, expiry, and until when milk and meat are withheld. No dose stands on any page: label and vet.")
            .Sentence(ComesOut(sheet))
            .Sentence(ToKeep(sheet));
    }

    private static Table Rows(Plan plan, HormoneSheet sheet, string caption, IEnumerable<HormoneRow> rows, bool byMob = true) => SheetRows.Table(
        plan, caption, ["her day", "what is done", "beware"], rows, row => row.Who,
        row => [Day(row), string.Join("; ", row.Steps.Select(Step)), SheetRows.Waived(sheet.Session, row.Who)], byMob);

    private static string Count(HormoneSheet sheet, int given) => given == 0 ? "Nobody stands to be given anything." : $"{Numbers.Count(given, "animal", "animals")} to treat, if nothing happens before.";

    public static string Day(HormoneRow row) => row.NotGiven?.DeviceSince is { } since ? $"in since {Dates.Long(since, row.Start.Year)}"
        : row.Day == 0 ? $"{row.Method.Name}, day 0" : $"{row.Method.Name}, day {row.Day} (day 0 on {Dates.Long(row.Start, row.Start.Year)}){(row.IsDonor ? ", a donor" : "")}{(row.IsSecondChance ? $", not seen in heat by day {row.Method.Again!.NotSeenBy}: once more" : "")}";

    public static string Step(MethodStep step) => step.Text
        + (step.Part is { } time ? $", {(time == DayPart.Morning ? "in the morning" : "in the evening")}" : "")
        + (step.After is { } after ? $", {Numbers.Count(after.Hours, "hour", "hours")} after day {after.Day}" : "")
        + (step.Device switch { DeviceMove.In => " (device in)", DeviceMove.Out => " (device out)", _ => "" });

    /// <summary>No prostaglandin for her: whatever else is due is for the vet to say.</summary>
    public static string Why(HormoneRow row) => row.NotGiven switch
    {
        { DeviceSince: not null } => "the device is due out by the book; nothing else is planned for her",
        { Begun: { } begun } => CheckWords.Of(begun),
        _ => "she does not surely pass the safety rules for treatment on that day: nothing is given, ask the vet",
    };

    /// <summary>Declared cautions once; where the files declare none for what is given, those of the program.</summary>
    public static IEnumerable<string> Cautions(HormoneSheet sheet) => sheet.Rows.Concat(sheet.Spares).SelectMany(row => row.Steps)
        .Concat(sheet.ToAsk.SelectMany(animal => sheet.Session.Methods.Where(method => method.Method.Name == animal.Method).SelectMany(method => method.Method.Steps.Where(step => step.Day == 0))))
        .SelectMany(step => step.Cautions.IsEmpty ? [SafetyNotes.For(step.Text) ?? ""] : step.Cautions.Select(caution => caution.Text)).Where(text => text.Length > 0).Distinct();

    /// <summary>On which day what goes in comes out, method by method where they differ.</summary>
    public static string ComesOut(HormoneSheet sheet)
    {
        var days = sheet.Rows.Where(row => row.DeviceGoesIn).SelectMany(row => row.Method.Steps.Where(step => step.Device == DeviceMove.Out).Take(1).Select(step => (Day: row.Start.PlusDays(step.Day), row.Method.Name)))
            .Distinct().GroupBy(one => one.Day, one => one.Name).OrderBy(day => day.Key).ToList();
        return days.Count == 1 ? $"{Dates.WithWeekday(days[0].Key)}: out comes all that went in."
            : string.Join(' ', days.Select(day => $"{Dates.WithWeekday(day.Key)}: out comes what went in for {Phrases.And([.. day])}."));
    }

    /// <summary>A line for the programme's file, so that the next plan keeps these names.</summary>
    public static string ToKeep(HormoneSheet sheet) => string.Join(' ', sheet.Rows.Where(row => row is { IsGiven: true, Day: 0, IsDonor: false } && !IsBooked(sheet.Session, row)).GroupBy(row => row.Method.Name)
        .Select(method => $"To keep these names, write under the programme: prepare {string.Join(", ", method.Select(row => $"\"{row.Who.Number}\""))} by \"{method.Key}\" for session {sheet.Session.Number}"));

    private static bool IsBooked(NamedSession session, HormoneRow row) => session.Named.Any(animal => animal.Animal == row.Who.Animal && (animal.IsBooked || animal.IsBegun));
}
