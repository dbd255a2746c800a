using Byrelaw.Planning.Pairing;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw pair PROGRAMME</c>: on the day of transfer, which embryo into which recipient, and the run sheet.</summary>
internal static class PairCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var on = SharedOptions.Date("--on", "The day of transfer; without it today.");
        var rehearse = SharedOptions.Date("--rehearse", "Draw the run sheet of this day as if today were it: marked REHEARSAL, and in no ledger.");
        var (recordsTo, by, strict) = (SharedOptions.RecordsTo(), SharedOptions.By(), SharedOptions.Strict());
        var order = new Option<string?>("--order") { Description = "A file with the numbers in the order of the race, one a line.", HelpName = "FILE" };
        var also = Several("--also", "A donor, or one booked for a later session, who may be used all the same.", "ANIMAL");
        var without = Several("--without", "An animal, or an embryo by its label, that is left out.", "WHAT");
        var folder = new Option<string>("--out") { Description = $"The folder for the sheet; without it: {MorningAskedFor.DefaultOut}.", HelpName = "DIR", DefaultValueFactory = _ => MorningAskedFor.DefaultOut };
        var command = new Command("pair", "On the day: which embryo into which recipient, and the run sheet.") { programme, on, rehearse, recordsTo, by, order, also, without, folder, strict };
        command.SetAction(parsed =>
        {
            var isRehearsal = parsed.GetValue(rehearse) is not null;
            var day = parsed.GetValue(rehearse) ?? parsed.GetValue(on) ?? doors.Today;
            var asked = new MorningAskedFor(parsed.GetValue(programme)!, day, isRehearsal)
            {
                Out = parsed.GetValue(folder)!,
                RecordsTo = SharedOptions.Reached(parsed.GetValue(recordsTo), isRehearsal && day > doors.Today ? doors with { Clock = new DayClock(day) } : doors),
                By = parsed.GetValue(by),
            };
            return RunSheetOfADay.Write(
                asked with { Besides = isRehearsal && parsed.GetValue(on) is not null ? ["--on with --rehearse"] : [] },
                new PairingAsked(day) { Also = [.. parsed.GetValue(also) ?? []], Without = [.. parsed.GetValue(without) ?? []] },
                parsed.GetValue(order), doors with { IsStrict = parsed.GetValue(strict) });
        });
        return command;
    }

    private static Option<string[]> Several(string name, string description, string what) =>
        new(name) { Description = description, HelpName = what, AllowMultipleArgumentsPerToken = true };
}
