namespace Byrelaw.Cli;

/// <summary>Shows how far long work is, on a terminal only, and wipes itself away when done.</summary>
/// <param name="doors">Where to.</param>
/// <param name="doing">What is being done: <c>Judging</c>.</param>
/// <param name="quietFor">Work that is done sooner shows nothing; 0.4 seconds where it is not said.</param>
internal sealed class ProgressBar(Doors doors, string doing, TimeSpan? quietFor = null) : IProgress<(int Done, int Of)>, IDisposable
{
    private const int Width = 30;
    private const int AgainAfterMilliseconds = 100;
    private readonly Lock _lock = new();
    private long _next = Environment.TickCount64 + (long)(quietFor ?? TimeSpan.FromSeconds(0.4)).TotalMilliseconds;
    private int _drawn;

    /// <inheritdoc/>
    public void Report((int Done, int Of) value)
    {
        if (!doors.ShowsProgress || Environment.TickCount64 < Volatile.Read(ref _next))
        {
            return;
        }

        lock (_lock)
        {
            _next = Environment.TickCount64 + AgainAfterMilliseconds;
            var full = value.Of == 0 ? Width : (int)((long)Width * value.Done / value.Of);
            var line = $"{doing} {new string('#', full)}{new string('.', Width - full)} {value.Done} of {value.Of}";
            doors.Err.Write('\r' + line.PadRight(_drawn));
            doors.Err.Flush();
            _drawn = line.Length;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_drawn > 0)
        {
            doors.Err.Write('\r' + new string(' ', _drawn) + '\r');
            doors.Err.Flush();
        }
    }
}
