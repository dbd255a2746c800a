using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>Why an animal is not named.</summary>
internal static class CheckWords
{
    public static string Of(FailedCheck check) => check switch
    {
        FailedCheck.TooLate => "the method's first day is past",
        FailedCheck.NoHeatServes => "no heat by this method serves a transfer of the session",
        FailedCheck.NoListForTreatment => "no list says who may be treated",
        FailedCheck.Carrying => "she may not carry on the days of transfer, or is not on the list",
        FailedCheck.Treatment => "she may not be treated on that day",
        FailedCheck.Suits => "the method does not suit her",
        FailedCheck.NotKnownInTime => "what is not known of her cannot be found out in time",
        _ => "she is no recipient",
    };
}
