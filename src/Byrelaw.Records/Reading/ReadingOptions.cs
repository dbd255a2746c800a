namespace Byrelaw.Records.Reading;

/// <summary>How a file is cut up for reading. Nothing of what is read depends on it.</summary>
/// <param name="BlockSize">How many bytes a thread takes at a time.</param>
/// <param name="Threads">How many threads read.</param>
internal sealed record ReadingOptions(int BlockSize, int Threads)
{
    /// <summary>Blocks that fit into a processor's cache, and every processor.</summary>
    public static readonly ReadingOptions Default = new(1 << 20, Environment.ProcessorCount);
}
