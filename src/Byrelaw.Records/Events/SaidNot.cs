namespace Byrelaw.Records.Events;

/// <summary>What a person says is no such kind: <c>leave out Due, which is not pregnancy test</c>.</summary>
internal static class SaidNot
{
    /// <summary>Whether that is said of a heading, or of what stands below it.</summary>
    public static bool IsSaid(this ImmutableArray<LeftOut> left, string heading, string text, Kind kind) =>
        left.Any(one => one.IsNot?.Id == kind.Id && (NameFolding.Fold(one.Word) == NameFolding.Fold(heading) || NameFolding.Fold(one.Word) == NameFolding.Fold(text)));
}
