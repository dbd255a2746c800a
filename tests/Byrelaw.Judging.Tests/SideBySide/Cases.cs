namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>How many random cases a build server has time for; tests that take longer for each try a part of them.</summary>
public static class Cases
{
    public const long Count = 300;
}
