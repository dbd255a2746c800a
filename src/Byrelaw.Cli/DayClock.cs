namespace Byrelaw.Cli;

/// <summary>A clock that stands at noon of a day: for a rehearsal, as if today were it.</summary>
internal sealed class DayClock(LocalDate day) : TimeProvider
{
    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => new(day.Year, day.Month, day.Day, 12, 0, 0, TimeSpan.Zero);

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
}
