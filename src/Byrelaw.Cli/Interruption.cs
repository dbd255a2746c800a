using System.Runtime.InteropServices;

namespace Byrelaw.Cli;

/// <summary>Somebody who pressed Ctrl-C: the work ends where it can, not where it stands.</summary>
public sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration? _signal;

    /// <summary>Waits for Ctrl-C.</summary>
    /// <param name="ofTheProcess">False where only <see cref="Now"/> interrupts, as in tests.</param>
    public Interruption(bool ofTheProcess)
    {
        _signal = !ofTheProcess ? null : PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
        {
            signal.Cancel = true;
            _source.Cancel();
        });
    }

    /// <summary>Whether the work should end.</summary>
    public bool IsWanted => _source.IsCancellationRequested;

    /// <summary>As if somebody had pressed Ctrl-C.</summary>
    public void Now() => _source.Cancel();

    /// <inheritdoc/>
    public void Dispose()
    {
        _signal?.Dispose();
        _source.Dispose();
    }
}
