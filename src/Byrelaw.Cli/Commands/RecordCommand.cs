namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw record PROGRAMME SHEET</c>: what was ticked becomes the record.</summary>
internal static class RecordCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var sheet = new Argument<string>("SHEET") { Description = "The sheet with its rows filled in, .csv or .xlsx; a file of your own with such headings; with --not-done a sheet's number." };
        var by = new Option<string?>("--by") { Description = "Who records it; it stands beside the kept copy.", HelpName = "TEXT" };
        var recorded = SharedOptions.Date("--recorded", "The day of entry; without it today.");
        var notDone = new Option<string?>("--not-done") { Description = "Say of every row of the sheet that is still open that it was not done, and why.", HelpName = "WHY" };
        var folder = new Option<string?>("--out") { Description = "With a rehearsal's sheet: the folder of a copy of the farm, into which it is written.", HelpName = "DIR" };
        var herd = SharedOptions.Herd();
        var command = new Command("record", "Write what a filled-in sheet says into events.csv: all of it or nothing, each row once.") { programme, sheet, by, recorded, notDone, folder, herd };
        command.SetAction(parsed => SheetRecorded.Run(
            new SheetToRecord(parsed.GetValue(programme)!, parsed.GetValue(sheet)!, parsed.GetValue(by), parsed.GetValue(recorded), parsed.GetValue(notDone), parsed.GetValue(folder), parsed.GetValue(herd)), doors));
        return command;
    }
}

/// <summary>What is to be recorded.</summary>
/// <param name="Programme">The programme's file.</param>
/// <param name="Sheet">The filled-in file, or a number.</param>
/// <param name="By">Who records it.</param>
/// <param name="Recorded">The day of entry; null for today.</param>
/// <param name="NotDone">Why all that is open was not done; null for a filled-in sheet.</param>
/// <param name="Out">The folder of a copy, for a rehearsal.</param>
/// <param name="Herd">Which herd.</param>
internal sealed record SheetToRecord(string Programme, string Sheet, string? By, LocalDate? Recorded, string? NotDone, string? Out, string? Herd);
