using Byrelaw.Reporting.Verifying;

namespace Byrelaw.Reporting.Json;

/// <summary>A kept report held to what it was drawn up from, for programs.</summary>
/// <param name="Holds">Whether the report stands: nothing edited, the same rules and records, the same answers.</param>
/// <param name="JudgedWith">The program that drew it up, and its version.</param>
/// <param name="VerifiedWith">The same of the one that judged anew.</param>
/// <param name="SameRules">Whether the rules have the fingerprint they had.</param>
/// <param name="SameRecords">The same of the records.</param>
/// <param name="Edited">Files of the report that are not as they were written.</param>
/// <param name="Missing">Files of it that are no longer there.</param>
/// <param name="EditedAnimals">Animals on edited lines, as far as that can be told.</param>
/// <param name="Differences">Animals of which the two say something different.</param>
public sealed record VerifyJson(
    bool Holds, string JudgedWith, string VerifiedWith, bool SameRules, bool SameRecords, IReadOnlyList<string> Edited, IReadOnlyList<string> Missing,
    IReadOnlyList<string> EditedAnimals, IReadOnlyList<AnswerDifferenceJson> Differences)
{
    /// <summary>The same facts as the text.</summary>
    public static string Of(Verification verification)
    {
        ArgumentNullException.ThrowIfNull(verification);
        return SeenJson.Of(
            new VerifyJson(
                verification.Holds, verification.Kept.Draft.JudgedWith, verification.Now.JudgedWith, verification.SameRules, verification.SameRecords,
                verification.Kept.Edited, verification.Kept.Missing, verification.EditedAnimals,
                [.. verification.Differences.Select(one => new AnswerDifferenceJson(one.List, one.Animal, one.Was, one.Now))]),
            JsonShapes.Readable.VerifyJson);
    }
}

/// <summary>An animal of which a report and its inputs say something different; null where she is not on the list. The same answer twice: dates, reasons, points or evidence differ.</summary>
public sealed record AnswerDifferenceJson(string List, string Animal, string? Was, string? Now);
