namespace Byrelaw.Records.Reading;

/// <summary>
/// Gives memory back between the steps of reading a very large file. What a step leaves behind is as large
/// as the herd; left to itself the collector waits, on a machine with much memory, until there are twice that.
/// </summary>
internal sealed class Room(bool isLarge)
{
    private const long Large = 256L << 20;

    /// <summary>For a file of this length; small ones are left alone, for the pause would cost more than it gives.</summary>
    public static Room For(long length) => new(length >= Large);

    /// <summary>Gives back what is not used any more.</summary>
    public void Make()
    {
        if (isLarge)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }
}
