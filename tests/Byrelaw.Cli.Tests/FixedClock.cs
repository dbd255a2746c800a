namespace Byrelaw.Cli.Tests;

/// <summary>A clock that a test sets.</summary>
internal sealed class FixedClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 9, 21, 6, 30, 5, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
