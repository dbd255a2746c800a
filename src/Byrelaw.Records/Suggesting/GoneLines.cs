using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>
/// Lines for two columns of a list of animals that say who is gone: the day, and why. Read together, one whose day nobody knows is gone all the same.
/// </summary>
internal static class GoneLines
{
    private const int Indent = 4;
    private const int Bullet = 6;

    /// <summary>The lines; none where the two columns are not there.</summary>
    /// <param name="columns">Of the list.</param>
    /// <param name="vocabulary">The words.</param>
    public static IEnumerable<SuggestedLine> Of(IReadOnlyList<ColumnProfile> columns, Vocabulary vocabulary)
    {
        if (Headed(columns, HeadingHints.Gone) is not { HoldsDates: true } day || Headed(columns, HeadingHints.WhyGone) is not { Filled: > 0 } why)
        {
            yield break;
        }

        yield return new SuggestedLine(Indent, $"kind in {NameText.Text(why.Heading)}, dated in {NameText.Text(day.Heading)}", IsOpen: true, "what became of those who are gone; without this line they count as here");
        string[] leaving = [.. vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Effect == HerdEffect.Leaves).Select(kind => kind.Name)];
        foreach (var (text, count) in why.Texts.OrderByDescending(text => text.Value).ThenBy(text => text.Key, StringComparer.Ordinal).Take(CodeLines.Most).Where(text => vocabulary.FindKind(text.Key) is null))
        {
            foreach (var kind in leaving)
            {
                yield return new SuggestedLine(Bullet, $"- {NameText.Text(text)} is {NameText.Exact(kind)}", IsOpen: true, count == 1 ? "1 animal" : $"{count} animals");
            }
        }
    }

    private static ColumnProfile? Headed(IReadOnlyList<ColumnProfile> columns, string what) => columns.Where(column => HeadingHints.Find(column.Name) == what).ToList() is [var only] ? only : null;
}
