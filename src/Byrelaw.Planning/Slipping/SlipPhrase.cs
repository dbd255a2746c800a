using System.Globalization;
using System.Text.RegularExpressions;

namespace Byrelaw.Planning.Slipping;

/// <summary>Reads what went wrong from the words in which people say it.</summary>
public static partial class SlipPhrase
{
    /// <summary>The forms that are understood, for messages.</summary>
    public const string Forms = "\"collection 1 day\", \"no eggs\", \"no courier 1 day\" or \"METHOD day 7, 1 day\" for a treatment given late";

    /// <summary>Reads a phrase; null where it says nothing that is understood, or names a method that the plan does not use.</summary>
    /// <param name="phrase">As written.</param>
    /// <param name="calendar">The plan's.</param>
    /// <param name="plans">Its methods.</param>
    /// <param name="session">The session, from 1.</param>
    /// <param name="on">The day on which people learn of it; null for the day it should have happened.</param>
    public static Slip? Read(string phrase, PlanCalendar calendar, PlanStatements plans, int session = 1, LocalDate? on = null)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(plans);
        if (calendar.Sessions.FirstOrDefault(one => one.Number == session) is not { } planned)
        {
            return null;
        }

        var text = NameFolding.Fold(phrase);
        var collected = planned.Collection ?? planned.FirstTransfer;
        if (text == "no eggs")
        {
            return new(SlipKind.NoEggs, session, 0, on ?? collected);
        }

        if (Late().Match(text) is { Success: true } late)
        {
            return late.Groups["what"].Value == "collection"
                ? new(SlipKind.CollectionLater, session, Number(late, "days"), on ?? collected)
                : new(SlipKind.NoCourier, session, Number(late, "days"), on ?? planned.FirstTransfer);
        }

        return Treatment().Match(text) is { Success: true } missed && plans.Method(missed.Groups["method"].Value) is { } method
            && calendar.Treatments.FirstOrDefault(one => one.Session == session && one.Method.Name == method.Name) is { } treatment
            && Number(missed, "day") is var day && treatment.Days.FirstOrDefault(step => step.Step.Day == day) is { } given
            ? new(SlipKind.TreatmentLate, session, Number(missed, "days"), on ?? given.Date, method.Name, day)
            : null;
    }

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<what>collection|no courier|courier) (?<days>[1-9][0-9]?) days?$")]
    private static partial Regex Late();

    [GeneratedRegex("^(?<method>.+?),? day (?<day>[0-9]{1,2}),? (?<days>[1-9][0-9]?) days?$")]
    private static partial Regex Treatment();
}
