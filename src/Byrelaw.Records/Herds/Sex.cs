namespace Byrelaw.Records.Herds;

/// <summary>The sex on record.</summary>
public enum Sex : byte
{
    /// <summary>Blank or unreadable.</summary>
    NotKnown,

    /// <summary>F.</summary>
    Female,

    /// <summary>M: a bull, or one to be.</summary>
    Male,

    /// <summary>A steer: no bull, and no female.</summary>
    Steer,
}
