namespace Byrelaw.Reporting.Words;

/// <summary>What stands on her line, whatever the answer and on every list. Nothing else says either.</summary>
public static class InCalfWords
{
    /// <summary>The words; empty for nothing to tell.</summary>
    public static string Of(InCalf inCalf) => inCalf switch
    {
        InCalf.TakeAsInCalf => "Take her as in calf",
        InCalf.MayBe => "May be in calf",
        _ => "",
    };

    /// <summary>The same of several animals.</summary>
    public static string OfMany(InCalf inCalf) => inCalf == InCalf.TakeAsInCalf ? "Take as in calf" : Of(inCalf);
}
