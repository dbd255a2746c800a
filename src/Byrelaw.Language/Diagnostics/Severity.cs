namespace Byrelaw.Language.Diagnostics;

/// <summary>How bad a problem is.</summary>
public enum Severity
{
    /// <summary>Worth a look; nothing is held up.</summary>
    Warning,

    /// <summary>Something could not be understood or must not be trusted.</summary>
    Error,
}
