using Byrelaw.Workshop.Carrying;

namespace Byrelaw.Reporting.Terminal;

/// <summary>Says what became of each part of a programme's file that was carried to another season.</summary>
public static class CarryText
{
    private static readonly (CarryKind Kind, string Heading)[] Parts =
    [
        (CarryKind.Moved, "Moved"),
        (CarryKind.ToRenew, "To be agreed again, and marked so"),
        (CarryKind.Dropped, "Left out"),
        (CarryKind.LookAt, "Kept as written; look whether it still holds"),
    ];

    /// <summary>The whole text.</summary>
    /// <param name="carried">What was done.</param>
    /// <param name="old">The old file as shown.</param>
    /// <param name="fresh">The new one.</param>
    public static string Of(Carried carried, string old, string fresh)
    {
        ArgumentNullException.ThrowIfNull(carried);
        var text = new StringBuilder();
        var weeks = carried.Days / 7;
        text.Append($"{PlainText.Clean(fresh)}: {PlainText.Clean(old)} with its dates {Numbers.Count(weeks, "week", "weeks")} later, on the same days of the week.\n");
        foreach (var (kind, heading) in Parts)
        {
            var notes = carried.Notes.Where(note => note.Kind == kind).ToList();
            if (notes.Count > 0)
            {
                text.Append($"\n{heading}:\n");
                notes.ForEach(note => text.Append($"  line {note.Line}: {PlainText.Clean(note.Text)}\n"));
            }
        }

        return text.Append($"\nNext: say in its records block what is complete, then byrelaw check {PlainText.Clean(fresh)}\n").ToString();
    }
}
