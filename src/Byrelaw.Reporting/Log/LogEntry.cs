using System.Text.Json.Serialization;

namespace Byrelaw.Reporting.Log;

/// <summary>One judging as the log keeps it: when, what, by which rules and records, and what it came to. Keys are stable.</summary>
/// <param name="Number">Of the line, from 1.</param>
/// <param name="At">When, UTC, ISO 8601 to the second.</param>
/// <param name="Command"><c>draft</c> or <c>plan</c>.</param>
/// <param name="By">Who judged, where someone has said so; no name is taken from the machine.</param>
/// <param name="Programme">The programme's name.</param>
/// <param name="File">The programme's file, without its folder: the log lies beside it.</param>
/// <param name="JudgedWith">The program and its version.</param>
/// <param name="Rulebook">Fingerprint of the rules.</param>
/// <param name="Records">Fingerprint of the records.</param>
/// <param name="KnownDay">The day the records reach.</param>
/// <param name="KnownOn">The day as known on which it was judged; null for today's knowledge.</param>
/// <param name="Lists">The days judged and how many have which answer.</param>
/// <param name="Answers">Digest of all answers with their reasons (<see cref="AnswersDigest"/>).</param>
/// <param name="Before">The hash of the line before; null on the first.</param>
public sealed record LogEntry(
    int Number, string At, string Command, string? By, string Programme, string File, string JudgedWith, string Rulebook, string Records,
    string KnownDay, string? KnownOn, IReadOnlyList<LoggedList> Lists, string Answers, string? Before)
{
    /// <summary>The day up to which a person said that everything is written down; left out where nobody did.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? RecordsTo { get; init; }

    /// <summary>Sheets that were open, by number; left out where none was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Sheets { get; init; }

    /// <summary>What is to be logged of a draft; its place in the log comes later.</summary>
    public static LogEntry Of(Draft draft, string command, string file, string? by, DateTimeOffset at) => new(
        0, InstantPattern.General.Format(Instant.FromDateTimeOffset(at)), command, by is null ? null : PlainText.Clean(by),
        draft.Rulebook.Programme?.Name ?? "", file, Reporting.JudgedWith.NameAndVersion, Fingerprints.RulebookOf(draft), draft.Herd.Fingerprint,
        ReachWords.Iso(draft.Herd), draft.KnownOn is { } day ? LocalDatePattern.Iso.Format(day) : null,
        [.. draft.Lists.Select(LoggedList.Of)], AnswersDigest.Of(JsonText.Lists(draft)), null)
    {
        Sheets = OpenNumbers(draft.Herd),
        RecordsTo = draft.Rulebook.Records?.RecordsTo is { } to ? LocalDatePattern.Iso.Format(to) : null,
    };

    /// <summary>The numbers of open sheets, each once; null for none.</summary>
    internal static IReadOnlyList<string>? OpenNumbers(Herd herd) => herd.OpenRows.IsEmpty ? null : [.. herd.OpenRows.Select(row => row.Sheet.Number).Distinct()];
}

/// <summary>One list of a judging: its days, and how many have which answer.</summary>
public sealed record LoggedList(string List, string JudgedFrom, string JudgedTo, int Ready, int OnCourse, int Later, int Ask, int No)
{
    internal static LoggedList Of(ListJudgement list) => new(
        list.Choice.List, LocalDatePattern.Iso.Format(list.Choice.JudgedFrom), LocalDatePattern.Iso.Format(list.Choice.JudgedTo),
        list.Count(Answer.Ready), list.Count(Answer.OnCourse), list.Count(Answer.Later), list.Count(Answer.Ask), list.Count(Answer.No));
}
