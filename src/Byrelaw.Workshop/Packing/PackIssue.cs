namespace Byrelaw.Workshop.Packing;

/// <summary>Which of several packs of the same rules this is, so that an older one is told from a newer.</summary>
/// <param name="PackedOn">The day it was packed, as the calendar of its maker's machine had it.</param>
/// <param name="Number">From 1; the maker counts on.</param>
public sealed record PackIssue(LocalDate PackedOn, int Number)
{
    private const string Head = "packed on ";
    private const string Between = ", number ";

    /// <summary>Whether this one was packed before another: by its number, and of one number by its day.</summary>
    public bool IsBefore(PackIssue other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Number != other.Number ? Number < other.Number : PackedOn < other.PackedOn;
    }

    /// <summary>The line of the pack that says it; <see cref="Read"/> reads it back.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Head}{LocalDatePattern.Iso.Format(PackedOn)}{Between}{Number}");

    /// <summary>Reads such a line; null where it is none.</summary>
    public static PackIssue? Read(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var at = line.IndexOf(Between, StringComparison.Ordinal);
        return at > Head.Length && line.StartsWith(Head, StringComparison.Ordinal)
            && LocalDatePattern.Iso.Parse(line[Head.Length..at]) is { Success: true, Value: var day }
            && int.TryParse(line[(at + Between.Length)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0
            && new PackIssue(day, number) is var issue && issue.ToString() == line ? issue : null;
    }
}
