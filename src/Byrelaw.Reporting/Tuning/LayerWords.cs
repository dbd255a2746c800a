namespace Byrelaw.Reporting.Tuning;

/// <summary>The values that each layer of a rule uses, and where each says it has them from.</summary>
internal static class LayerWords
{
    /// <summary>Each version that has a number in this place, the first written first.</summary>
    public static IReadOnlyList<(string Name, NumberVersion Version)> Of(RuleTuningSide side) =>
        [.. NumberVersions.Of(side.Number).Reverse().Select(version => (Name(version.Rule, side.Rulebook), version))];

    /// <summary><c>base</c>, <c>practice.byre</c>, <c>this farm</c>.</summary>
    public static string Name(Rule version, Rulebook rulebook) =>
        IsOwn(version, rulebook) ? "this farm"
        : version.Before is null ? "base"
        : FileWords.Short(version.Span.File?.Path ?? "a layer");

    /// <summary>One version in a sentence.</summary>
    public static string Sentence(string name, NumberVersion version, RuleNumber number)
    {
        var value = version.Value is { } found ? NumberWords.Value(number, (decimal)found) : $"asks for something else, “{ConditionWords.Of(version.Rule.Shown)}”";
        var agreed = LocalPractice.Agreed(version.Rule.Agreement);
        var source = version.Rule.Source is { } cited && cited != version.Rule.Before?.Source ? $" Source: {Phrases.Stop(cited)}" : "";
        var whose = name is "base" ? "The base" : name is "this farm" ? "This farm" : $"The layer {name}";
        return $"{whose}: {value} ({ChangeHistory.Place(version.Rule.Span)}).{(agreed.Length == 0 ? "" : " " + agreed)}{source}";
    }

    private static bool IsOwn(Rule version, Rulebook rulebook) =>
        version.Span.File is not null && ReferenceEquals(version.Span.File, rulebook.Files.FirstOrDefault());
}

/// <summary>A number and the rulebook it stands in.</summary>
internal readonly record struct RuleTuningSide(RuleNumber Number, Rulebook Rulebook);
