namespace Byrelaw.Language.Binding.Plans;

/// <summary>The days of a programme's collections: as written, repeated, or on the first visit that is possible until one is chosen.</summary>
/// <param name="First">The first; null where there is none.</param>
/// <param name="All">All in order; empty where the visit is still to be chosen.</param>
/// <param name="OnAVisit">Between which days the visit is to be; null where days are written.</param>
/// <param name="Repeat">How many times; null for as many as are written.</param>
internal sealed record CollectionDays(LocalDate? First, ImmutableArray<LocalDate> All, VisitWindow? OnAVisit, Repeat? Repeat)
{
    private const int Most = 30;
    private const string Visit = "collection";

    /// <summary>A programme without a collection.</summary>
    public static readonly CollectionDays None = new(null, [], null, null);

    /// <summary>Binds the line; tells what is wrong with it.</summary>
    public static CollectionDays Bind(Context context, CollectionLine line, ImmutableArray<Visits> visits, string? region, ImmutableArray<Holiday> holidays)
    {
        Repeat? repeat = line.Times is not null && context.Whole(line.Times, 1, Most, "how many collections") is { } times
            && context.Length(line.Every!) is { } every ? new Repeat(times, every) : null;
        if (line.Between is ({ } from, { } to))
        {
            var window = new VisitWindow(from.Value, to.Value, line.Span);
            if (to.Value < from.Value)
            {
                context.Problems.Add(AimProblems.WindowBackwards(from.Span.To(to.Span)));
                return new CollectionDays(null, [], window, repeat);
            }

            return OnVisit(context, window, repeat, visits, region, holidays);
        }

        var days = line.Days.Select(day => day.Value).ToList();
        var written = line.Days[0].Span.To(line.Days[^1].Span);
        var problem = days.Count > Most ? AimProblems.TooManyCollections(written, days.Count, Most)
            : line.Times is not null && days.Count > 1 ? AimProblems.CollectionsRepeated(line.Span)
            : days.Zip(days.Skip(1)).Any(pair => pair.First >= pair.Second)
                ? AimProblems.CollectionsOutOfOrder(written, string.Join(", ", days.Distinct().Order().Select(NumberText.Of)))
            : null;
        if (problem is not null)
        {
            context.Problems.Add(problem);
        }

        return new CollectionDays(days[0], problem is null ? Repeated(days, repeat) : [days[0]], null, repeat);
    }

    /// <summary>The days of a first collection and those that follow it.</summary>
    public static ImmutableArray<LocalDate> Repeated(IReadOnlyList<LocalDate> days, Repeat? repeat) => repeat is null
        ? [.. days]
        : [.. Enumerable.Range(0, repeat.Times).Select(i => (repeat.Every with { Count = repeat.Every.Count * i }).After(days[0]))];

    private static CollectionDays OnVisit(
        Context context, VisitWindow window, Repeat? repeat, ImmutableArray<Visits> visits, string? region, ImmutableArray<Holiday> holidays)
    {
        var none = new CollectionDays(null, [], window, repeat);
        var everywhere = VisitDays.Named(visits, Visit, null).ToList();
        var regions = everywhere.Select(one => one.Region).OfType<string>().DistinctBy(NameFolding.Fold).ToList();
        var problem = everywhere.Count == 0 ? VisitProblems.UnknownVisits(window.Span, Visit, null)
            : region is null && regions.Count > 1 ? AimProblems.SeveralRegions(window.Span, regions)
            : region is not null && !VisitDays.Named(visits, Visit, region).Any() ? VisitProblems.NoVisitsTo(window.Span, Visit, region, regions)
            : null;
        if (problem is not null)
        {
            return context.Fail<CollectionDays>(problem) ?? none;
        }

        var days = VisitDays.Of(visits, Visit, region, holidays);
        var possible = days.Where(day => day >= window.From && day <= window.To).ToList();
        if (possible.Count == 0)
        {
            var nearest = days.IsEmpty ? null : NumberText.Of(days.MinBy(day => Away(day, window)));
            return context.Fail<CollectionDays>(AimProblems.NoVisitBetween(window.Span, nearest)) ?? none;
        }

        context.Problems.Add(AimProblems.VisitNotChosen(window.Span, NumberText.Of(possible[0])));
        return none with { First = possible[0] };
    }

    private static int Away(LocalDate day, VisitWindow window) =>
        day < window.From ? Period.DaysBetween(day, window.From) : Period.DaysBetween(window.To, day);
}
