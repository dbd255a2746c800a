using Byrelaw.Planning.Entering;
using Byrelaw.Records.Entering;

namespace Byrelaw.Reporting.Sheets;

/// <summary>What came of a sheet that was recorded, for a terminal.</summary>
public static class RecordText
{
    private const string Withholding = "What was given has withholding periods for milk and for meat: they are on its label; write them down beside it. Nothing here is a prescription.";

    /// <summary>What was written, and what stays open.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="open">Rows of the sheet that are open afterwards.</param>
    public static string Of(SheetOutcome outcome, IReadOnlyList<int> open)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(open);
        var text = new DocumentBuilder();
        if (outcome.IsWithdrawn)
        {
            return text.Sentence($"{Wording.Bold(outcome.Sheet.Number)} is withdrawn: nothing of it is written, and nothing of it is in doubt any more. What stands on record of it stays there.").OnTerminal(Ink.Plain);
        }

        var (done, not) = (outcome.Entries.Where(entry => !entry.IsNotDone).ToList(), outcome.Entries.Where(entry => entry.IsNotDone).ToList());
        text.Sentence($"{Wording.Bold(outcome.Sheet.Number)}: {Numbers.Count(outcome.Entries.Length, "row is", "rows are")} written{(outcome.AlreadyThere > 0 ? $", {outcome.AlreadyThere} stood there before" : "")}{(outcome.Filled > 0 ? $", {Numbers.Count(outcome.Filled, "blank cell", "blank cells")} of those filled in" : "")}.");
        text.In(1);
        foreach (var kind in done.GroupBy(entry => entry.Kind.Name))
        {
            text.Sentence($"{kind.Key}: {string.Join(", ", kind.Select(Said))}");
        }

        foreach (var reason in not.GroupBy(entry => (entry.Kind.Name, entry.Note)))
        {
            text.Sentence($"not done, {reason.Key.Name}: {string.Join(", ", reason.Select(entry => entry.Animal))}, because: {Phrases.Stop(reason.Key.Note)}");
        }

        text.In(0).Sentence(done.Exists(entry => entry.GivesSomething) ? Withholding : "");
        foreach (var tick in outcome.Unanswered.GroupBy(one => one.Kind.Name))
        {
            text.Sentence($"A tick is no {tick.Key}: nothing is written of it in {Rows([.. tick.Select(one => one.Row).Distinct()])} until an answer stands there.");
        }

        text.Sentence(open.Count == 0 ? outcome.Unanswered.IsEmpty ? "Every row of the sheet is on record." : "All that the sheet has boxes for is on record." : $"{Phrases.Sentence(Rows(open))} {(open.Count == 1 ? "is" : "are")} still open, and in doubt. Fill in what was done and record the file again; or, of all that was not done: --not-done \"why\".");
        return text.OnTerminal(Ink.Plain);
    }

    /// <summary>What was done and should not have been: it stands on record, because it happened.</summary>
    public static string Of(WrongButDone wrong)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        var entry = wrong.Entry;
        return $"Row {entry.Row}, {entry.Animal}, {Dates.Long(entry.Date)}: " + wrong.Why switch
        {
            WrongButDoneWhy.NotSafeToTreat => "by what was known before, she did not surely pass the safety rules for treatment on that day. What was given stands on record; tell the herd vet.",
            WrongButDoneWhy.NotSafeToCarry => "by what was known before, she did not surely pass the safety rules for an embryo on that day. The transfer stands on record; tell the herd vet.",
            WrongButDoneWhy.FoundInCalf => "the same sheet says that she was found in calf on that day or before. What was done stands on record; tell the herd vet at once.",
            WrongButDoneWhy.OtherEmbryo => $"embryo {entry.Detail("embryo")} is not the one on her line. It stands on record as it was written.",
            WrongButDoneWhy.OtherSide => "the embryo went into the horn away from the corpus luteum.",
            WrongButDoneWhy.NotReadBack => "nobody else read the straw back; that stays with the calf's parentage.",
            _ => "that is another day than the sheet's; her later steps are counted from what stands on record.",
        };
    }

    /// <summary>Which heats are timed, and which are not and why.</summary>
    public static string Of(TimedHeat heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        return heat.WhyNot is { } why ? $"{heat.Animal}: no timed heat is written, for {why}."
            : $"{heat.Animal}: timed heat on {Dates.Long(heat.Day)}, after {Phrases.And([.. heat.Method.Steps.Select(step => step.Day).Distinct().Select(day => $"day {day}")])} of {heat.Method.Name}.";
    }

    private static string Said(RecordedEntry entry) => entry.Animal + (entry.Value.Length > 0 ? $" {entry.Value}" : "") + (entry.Detail("device") is { Length: > 0 } device ? $" (device {device})" : "");

    private static string Rows(IReadOnlyList<int> rows) => $"{(rows.Count == 1 ? "row" : "rows")} {Phrases.And([.. rows.Select(row => $"{row}")])}";
}
