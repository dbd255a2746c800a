using System.Reflection;

namespace Byrelaw.Reporting;

/// <summary>What this program calls itself where an answer must say who gave it.</summary>
public static class JudgedWith
{
    /// <summary>The version: <c>0.1.0</c>.</summary>
    public static string Version { get; } = ReadVersion();

    /// <summary><c>byrelaw 0.1.0</c>.</summary>
    public static string NameAndVersion => $"byrelaw {Version}";

    private static string ReadVersion()
    {
        var version = typeof(JudgedWith).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0.0.0";
        return version.Split('+')[0];
    }
}
