using System.Text.Json.Serialization;
using Byrelaw.Reporting.Explaining;

namespace Byrelaw.Reporting.Json;

/// <summary>A doubt about the records.</summary>
/// <param name="Doubt">The kind of doubt: <c>expectation_fails</c> and its kin.</param>
/// <param name="Sentence">What is strange, with up to four animals.</param>
/// <param name="Expectation">The expectation that was tried; null for none.</param>
/// <param name="DoesNotCount">Kinds whose promises do not count.</param>
/// <param name="Effect">What comes of it, as a sentence.</param>
/// <param name="RowCount">How many rows it is about.</param>
/// <param name="Rows">The first 20 of them.</param>
/// <param name="Settle">What would settle it.</param>
public sealed record DoubtJson(
    string Doubt, string Sentence, string? Expectation, IReadOnlyList<string> DoesNotCount, string Effect, int RowCount, IReadOnlyList<DoubtRowJson> Rows, string Settle)
{
    private const int RowsShown = 20;

    /// <summary>The animals that are asked about for it, on any list of a draft; null where there are no lists.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? AskedAbout { get; init; }

    /// <summary>All doubts about a herd's records.</summary>
    public static IReadOnlyList<DoubtJson> Of(Herd herd) => [.. DoubtWords.Of(herd).Select(Of)];

    /// <summary>The same with whose answers each holds back.</summary>
    public static IReadOnlyList<DoubtJson> Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return [.. DoubtWords.Of(draft.Herd).Select(said => Of(said) with
        {
            AskedAbout = [.. draft.Lists.SelectMany(list => DoubtsAboutHer.Awaiting(list, said, draft.Herd)).Distinct(StringComparer.Ordinal)],
        })];
    }

    private static DoubtJson Of(SaidDoubt said) => new(
        said.Key, said.Sentence, said.Expectation, [.. said.Fallen.Select(kind => kind.Name)], said.Effect, said.RowCount,
        [.. said.Rows.Take(RowsShown).Select(row => new DoubtRowJson(row.Animal, row.Date is { } date ? LocalDatePattern.Iso.Format(date) : null, row.File, row.Line))],
        said.Settle);
}

/// <summary>A row that a doubt is about.</summary>
public sealed record DoubtRowJson(string? Animal, string? Date, string File, int Line);
