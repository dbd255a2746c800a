using System.Text.RegularExpressions;

namespace Byrelaw.Reporting.Verifying;

/// <summary>Finds the animals that an edited file of a report speaks of where it was edited.</summary>
internal static partial class EditedAnimals
{
    /// <summary>Their numbers: the one whose page it is, or those named on lines that differ.</summary>
    /// <param name="path">The file, within the report.</param>
    /// <param name="is">What it says now.</param>
    /// <param name="should">What it says drawn up anew; null where that is not known.</param>
    /// <param name="numbers">All animals of the report.</param>
    public static IEnumerable<string> In(string path, string @is, string? should, IReadOnlySet<string> numbers)
    {
        if (PageOf().Match(path) is { Success: true } page)
        {
            return [page.Groups[1].Value];
        }

        if (should is null)
        {
            return [];
        }

        var (have, want) = (@is.ReplaceLineEndings("\n").Split('\n'), should.ReplaceLineEndings("\n").Split('\n'));
        return have.Except(want).Concat(want.Except(have)).SelectMany(line => Word().Matches(line).Select(word => word.Value)).Where(numbers.Contains).Distinct();
    }

    [GeneratedRegex("/animals/([^/]+)\\.(?:md|html)$")]
    private static partial Regex PageOf();

    [GeneratedRegex("[\\w-]+")]
    private static partial Regex Word();
}
