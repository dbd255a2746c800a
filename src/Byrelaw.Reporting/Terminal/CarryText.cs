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
        var weeks = carried.Days / 7;
        var text = new DocumentBuilder().Sentence($"{fresh}: {old} with its dates {Numbers.Count(weeks, "week", "weeks")} later, on the same days of the week.");
        foreach (var (kind, heading) in Parts)
        {
            var notes = carried.Notes.Where(note => note.Kind == kind).ToList();
            if (notes.Count > 0)
            {
                text.In(0).Gap().Sentence($"{heading}:").In(1);
                notes.ForEach(note => text.Sentence($"line {note.Line}: {note.Text}"));
            }
        }

        return text.In(0).Gap().Sentence($"Next: say in its records block what is complete, then byrelaw check {fresh}").OnTerminal(Ink.Plain);
    }
}
