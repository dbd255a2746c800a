namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>What a table of kinds says of one that has no entry in it: nothing is taken for granted. A test asks every table for every kind.</summary>
public static class MissingKind
{
    /// <summary>For a kind of condition.</summary>
    public static NotSupportedException Of(Condition condition, string table) => new($"{condition?.GetType().Name} has no entry in {table}.");

    /// <summary>For a kind of window.</summary>
    public static NotSupportedException Of(Window window, string table) => new($"{window?.GetType().Name} has no entry in {table}.");
}
