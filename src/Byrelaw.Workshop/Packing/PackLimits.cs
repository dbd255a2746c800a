namespace Byrelaw.Workshop.Packing;

/// <summary>What one pack may hold: far more than any programme needs, far less than would fill a disk.</summary>
public static class PackLimits
{
    /// <summary>Bytes of the whole text.</summary>
    public const int Bytes = 16 * 1024 * 1024;

    /// <summary>Files; a rulebook is read from no more than that either.</summary>
    public const int Files = 500;

    /// <summary>Characters of a path.</summary>
    public const int Path = 200;
}
