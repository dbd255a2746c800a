namespace Byrelaw.Records.Herds;

/// <summary>Whether an animal is in the herd on a day.</summary>
public enum Presence : byte
{
    /// <summary>A row about joining or leaving could not be read, so either may be so.</summary>
    NotKnown,

    /// <summary>In the herd.</summary>
    In,

    /// <summary>Not yet born or joined, or gone.</summary>
    Out,
}
