namespace Byrelaw.Cli;

/// <summary>How a command ends.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and the answer is bad: errors in a rule file, records that cannot be trusted.</summary>
    public const int Bad = 1;

    /// <summary>Could not be done: no such file, wrong arguments.</summary>
    public const int CouldNot = 2;
}
