namespace Byrelaw.Disk;

/// <summary>What runs that were cut off have left in a folder.</summary>
public static class LeftOvers
{
    /// <summary>Clears what was left beside a place that this run need not write.</summary>
    /// <param name="place">Full path of a file or folder.</param>
    /// <exception cref="IOException">Another run is writing there.</exception>
    /// <exception cref="UnauthorizedAccessException">Nothing may be written in that folder.</exception>
    public static void ClearBeside(string place)
    {
        if (File.Exists(Beside.Of(place, Beside.Lock)))
        {
            WritersTurn.Take(place).Dispose();
        }
    }

    /// <summary>Clears them: puts back what had been moved aside, and takes away what was only half written. What cannot be cleared stays.</summary>
    /// <param name="place">A place whose turn the caller holds; everything else in its folder is cleared as far as nobody is writing it.</param>
    internal static void Clear(string place)
    {
        Settle(place);
        foreach (var path in Directory.EnumerateFiles(Path.GetDirectoryName(place)!, $".*.{Beside.Lock}", All).ToList())
        {
            if (Beside.PlaceOf(path, Beside.Lock) is { } other && other != place)
            {
                try
                {
                    using var turn = WritersTurn.TryTake(path);
                    if (turn is not null)
                    {
                        Settle(other);
                    }
                }
                catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
                {
                    // Another place than ours: its next run tries again.
                }
            }
        }
    }

    private static readonly EnumerationOptions All = new() { AttributesToSkip = 0 };

    private static void Settle(string place)
    {
        var old = Beside.Of(place, Beside.Old);
        if (Directory.Exists(old) && !Directory.Exists(place) && !File.Exists(place))
        {
            Directory.Move(old, place);
        }

        Beside.Remove(old);
        Beside.Remove(Beside.Of(place, Beside.New));
    }
}
