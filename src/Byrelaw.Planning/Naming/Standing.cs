namespace Byrelaw.Planning.Naming;

/// <summary>How an animal stands to a method in a session.</summary>
public enum Standing
{
    /// <summary>She is not treated, nor watched.</summary>
    Out,

    /// <summary>Something is not known, and it is proved that she is sure if it is found out in time and turns out well. She is not treated before.</summary>
    ToAsk,

    /// <summary>Both checks hold, and the method suits her.</summary>
    Sure,
}

/// <summary>What an animal does not pass, of all that must hold before she is treated by a method for a session.</summary>
public enum FailedCheck
{
    /// <summary>Nothing: all of it holds.</summary>
    None,

    /// <summary>The method's day 0 is before today, or no heat by it can serve any more.</summary>
    TooLate,

    /// <summary>The session is given up.</summary>
    Stopped,

    /// <summary>No heat of the method serves a transfer of the session.</summary>
    NoHeatServes,

    /// <summary>Something is given, and no list says who may be given it.</summary>
    NoListForTreatment,

    /// <summary>She may not carry on the days of transfer.</summary>
    Carrying,

    /// <summary>She may not be treated on day 0.</summary>
    Treatment,

    /// <summary>The method does not suit her.</summary>
    Suits,

    /// <summary>Something is not known, and nothing that can be found out by day 0 makes her sure.</summary>
    NotKnownInTime,
}

/// <summary>How one animal stands to a method in a session.</summary>
/// <param name="Standing">Sure, to ask or out.</param>
/// <param name="Failed">What is in the way first; <see cref="FailedCheck.None"/> of one who is sure.</param>
/// <param name="Missing">Of one to ask: how many records she misses.</param>
public readonly record struct StandingOf(Standing Standing, FailedCheck Failed, int Missing = 0)
{
    /// <summary>Of one to ask: what was supposed of her, by which she is sure; null of the others.</summary>
    public FindingOut.ProvedRecords? Proof { get; init; }

    /// <summary>Of one of whom something cannot be found out in time: a record that counts too late, if that is what stands in the way; else null.</summary>
    public FindingOut.AskedRecord? Closed { get; init; }
}
