namespace Byrelaw.LanguageServer.Tests.Support;

/// <summary>It is noon of one day, everywhere.</summary>
internal sealed class FixedClock(int year, int month, int day) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => new(year, month, day, 12, 0, 0, TimeSpan.Zero);
}
