namespace Byrelaw.Disk;

/// <summary>Whether a file could not be opened because another run has it open.</summary>
public static class InUse
{
    /// <summary>EWOULDBLOCK on Linux and macOS, ERROR_SHARING_VIOLATION on Windows: .NET hands on the system's own number.</summary>
    public static bool IsTheReason(IOException exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        return exception.HResult is 11 or 35 or unchecked((int)0x80070020);
    }
}
