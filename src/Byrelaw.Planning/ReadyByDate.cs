namespace Byrelaw.Planning;

/// <summary>How many recipients the rules let in, day by day, if nothing happens after the records end.</summary>
/// <param name="List">The list's name.</param>
/// <param name="First">The first day.</param>
/// <param name="Ready">For each day from the first, how many would be ready.</param>
/// <param name="Asked">For each day, how many more would be if all that is not known turned out well.</param>
public sealed record ReadyByDate(string List, LocalDate First, ImmutableArray<int> Ready, ImmutableArray<int> Asked)
{
    /// <summary>Counts the recipients' timelines; null where no list of recipients is chosen, or nobody is on it.</summary>
    public static ReadyByDate? Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        if (ProgrammeLists.Judged(draft.Lists, ProgrammeLists.Recipients(draft.Rulebook.Programme!)) is not { Animals: { IsEmpty: false } animals } list)
        {
            return null;
        }

        var first = animals[0].Timeline.First;
        var days = Period.DaysBetween(first, animals[0].Timeline.Last) + 1;
        var (ready, asked) = (new int[days], new int[days]);
        foreach (var animal in animals)
        {
            Add(animal.Timeline, first, ready, asked);
        }

        return new ReadyByDate(list.Choice.List, first, [.. ready], [.. asked]);
    }

    private static void Add(Timeline timeline, LocalDate first, int[] ready, int[] asked)
    {
        for (var i = 0; i < timeline.Stretches.Length; i++)
        {
            var stretch = timeline.Stretches[i];
            var counts = stretch.Truth switch { Truth.True => ready, Truth.Unknown => asked, _ => null };
            var end = i + 1 < timeline.Stretches.Length ? Period.DaysBetween(first, timeline.Stretches[i + 1].From) : ready.Length;
            for (var day = Period.DaysBetween(first, stretch.From); counts is not null && day < end; day++)
            {
                counts[day]++;
            }
        }
    }
}
