using Byrelaw.Planning.Slipping;

namespace Byrelaw.Reporting.Plans;

/// <summary>What is left when something goes wrong, on the terminal.</summary>
public static class SlipText
{
    /// <summary>The text.</summary>
    public static string Of(SlipAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var text = new DocumentBuilder().Heading(1, Headline(answer)).Gap().In(1).Sentence(Days(answer))
            .Sentence(answer.EmbryosOverAge ? "The embryos would be more than 8 days old by then: hardly any would hold." : "");
        foreach (var treatment in answer.Treatments)
        {
            text.Sentence($"{treatment.Before.Method.Name}: {State(treatment, answer.Slip)}");
        }

        foreach (var clash in answer.Clashes.Distinct())
        {
            text.Sentence($"{Dates.Long(clash.Date)} is {EntryWords.Of(clash)}.");
        }

        return text.Sentence("What can still be done:").Bullets(Ways(answer))
            .Sentence("Whether a treatment may wait or be given again is for the vet who ordered it to say, under the label.").OnTerminal(Ink.Plain);
    }

    private static string Headline(SlipAnswer answer) => (answer.Slip.Kind switch
    {
        SlipKind.CollectionLater => $"The collection comes {Numbers.Count(answer.Slip.Days, "day", "days")} later",
        SlipKind.NoEggs => "The collection yields nothing",
        SlipKind.NoCourier => $"The embryos come {Numbers.Count(answer.Slip.Days, "day", "days")} late",
        _ => $"{answer.Slip.Method}: day {answer.Slip.Day} is given {Numbers.Count(answer.Slip.Days, "day", "days")} late",
    }) + $" (known on {Dates.Long(answer.Slip.On)})";

    private static string Days(SlipAnswer answer) => answer.After is not { } after
        ? $"No embryos for {Dates.Range(answer.Before.FirstTransfer, answer.Before.FinalTransfer)}."
        : after.FirstTransfer == answer.Before.FirstTransfer
            ? $"Transfer stays on {Dates.Range(after.FirstTransfer, after.FinalTransfer)}."
            : $"Transfer moves from {Dates.Range(answer.Before.FirstTransfer, answer.Before.FinalTransfer)} to {Dates.Range(after.FirstTransfer, after.FinalTransfer)}.";

    private static string State(SlippedTreatment treatment, Slip slip)
    {
        var lost = treatment.Lost switch
        {
            0 => "nothing is lost",
            >= 1 => "all of its recipients are lost for these embryos",
            var share => $"{ChanceWords.Of(share)} of its recipients are lost for these embryos",
        };
        var point = treatment.NoReturn is { } day ? $"the point of no return is {Dates.Long(day.Date)} ({day.Step.Text})" : "";
        return treatment.State switch
        {
            SlipState.NotStarted => $"not started yet, so it moves: day 0 is now {Dates.Long((treatment.After ?? treatment.Before).Start)}; {lost}.",
            SlipState.MayWait => $"{Numbers.Count(treatment.Done(slip.On).Length, "treatment is", "treatments are")} given, and {point}: until then the rest may wait, if the vet says so. Going on as planned, {lost}.",
            _ when point.Length > 0 => $"{point} and is past: heats come when they come; {lost}.",
            _ => $"{lost}.",
        };
    }

    private static IEnumerable<string> Ways(SlipAnswer answer)
    {
        var fallback = answer.Fallback;
        if (fallback.FrozenEmbryos > 0)
        {
            yield return $"{Numbers.Count(fallback.FrozenEmbryos, "frozen embryo is", "frozen embryos are")} in the tank, for recipients that are ready on {Dates.Range(answer.Before.FirstTransfer, answer.Before.FinalTransfer)}.";
        }

        if (fallback is { ServeFrom: { } from, ServeTo: { } to })
        {
            yield return $"Serve at the coming heat, {Dates.Range(from, to)}: the cycle is not lost.";
        }

        if (fallback is { NextHeatFrom: { } next, NextHeatTo: { } last })
        {
            yield return $"Wait for their next heat, about {Dates.Range(next, last)}.";
        }

        if (fallback.NextCollection is { } collection)
        {
            yield return $"The next collection is on {Dates.Long(collection)}.";
        }
    }
}
