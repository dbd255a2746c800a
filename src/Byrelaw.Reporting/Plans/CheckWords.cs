using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>Why an animal is not named.</summary>
internal static class CheckWords
{
    /// <summary>Why one who is begun is in no number.</summary>
    public static string Of(BegunAnimal begun) => begun switch
    {
        { State: BegunState.NotSafe } => "she does not surely pass the safety rules for treatment any more; a device comes out all the same, and what else is due is for the vet to say",
        { State: BegunState.IsDonor } => "the programme names her as a donor, and a donor carries nobody's embryo; a device comes out all the same, and what else is due is for the vet to say",
        { State: BegunState.Stopped } => "her session is stopped; a device comes out all the same, and what else is due is for the vet to say",
        { State: BegunState.RowUnreadable } => "the session or the step beside her method cannot be read; mend the row",
        { State: BegunState.StepMissing } => "a step whose day is past is not on record with her method and that step",
        { Sessions.IsEmpty: true } => "no heat of hers serves a transfer of any session",
        _ => $"nobody wrote for which session, and sessions {Phrases.And([.. begun.Sessions.Select(session => $"{session}")])} can be meant; write it beside the method",
    };

    public static string Of(FailedCheck check) => check switch
    {
        FailedCheck.TooLate => "the method's first day is past",
        FailedCheck.Stopped => "the session is stopped",
        FailedCheck.NoHeatServes => "no heat by this method serves a transfer of the session",
        FailedCheck.NoListForTreatment => "no list says who may be treated",
        FailedCheck.Carrying => "she may not carry on the days of transfer, or is not on the list",
        FailedCheck.Treatment => "she may not be treated on that day",
        FailedCheck.Suits => "the method does not suit her",
        FailedCheck.NotKnownInTime => "what is not known of her cannot be found out in time",
        _ => "she is no recipient",
    };
}
