using System.Collections.Immutable;
using Byrelaw.Language.Binding.Conditions;
using Byrelaw.Language.Canonical;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Rulebooks.Plans;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Language.Syntax.Lines;
using NodaTime;

namespace Byrelaw.Language.Binding.Plans;

/// <summary>The days of a programme's collections: as written, repeated, or on the first visit that is possible until one is chosen.</summary>
/// <param name="First">The first; null where there is none.</param>
/// <param name="All">All in order; empty where the visit is still to be chosen.</param>
/// <param name="OnAVisit">Between which days the visit is to be; null where days are written.</param>
/// <param name="Repeat">How many times; null for as many as are written.</param>
internal sealed record CollectionDays(LocalDate? First, ImmutableArray<LocalDate> All, VisitWindow? OnAVisit, Repeat? Repeat)
{
    private const int Most = 30;

    /// <summary>A programme without a collection.</summary>
    public static readonly CollectionDays None = new(null, [], null, null);

    /// <summary>Binds the line; tells what is wrong with it.</summary>
    public static CollectionDays Bind(Context context, CollectionLine line, ImmutableArray<Visits> visits, string? region, ImmutableArray<Holiday> holidays)
    {
        Repeat? repeat = line.Times is not null && context.Whole(line.Times, 1, Most, "how many collections") is { } times
            && context.Length(line.Every!) is { } every ? new Repeat(times, every) : null;
        if (line.Between is ({ } from, { } to))
        {
            return OnVisit(context, new VisitWindow(from.Value, to.Value, line.Span), repeat, visits, region, holidays);
        }

        var days = line.Days.Select(day => day.Value).ToList();
        var isInOrder = days.Count <= Most && days.Zip(days.Skip(1)).All(pair => pair.First < pair.Second) && !(repeat is not null && days.Count > 1);
        if (!isInOrder)
        {
            context.Problems.Add(AimProblems.CollectionsOutOfOrder(line.Span));
        }

        return new CollectionDays(days[0], isInOrder ? Repeated(days, repeat) : [days[0]], null, repeat);
    }

    /// <summary>The days of a first collection and those that follow it.</summary>
    public static ImmutableArray<LocalDate> Repeated(IReadOnlyList<LocalDate> days, Repeat? repeat) => repeat is null
        ? [.. days]
        : [.. Enumerable.Range(0, repeat.Times).Select(i => (repeat.Every with { Count = repeat.Every.Count * i }).After(days[0]))];

    private static CollectionDays OnVisit(
        Context context, VisitWindow window, Repeat? repeat, ImmutableArray<Visits> visits, string? region, ImmutableArray<Holiday> holidays)
    {
        var none = new CollectionDays(null, [], window, repeat);
        if (window.To < window.From)
        {
            return context.Fail<CollectionDays>(AimProblems.WindowBackwards(window.Span)) ?? none;
        }

        var named = VisitDays.Named(visits, "collection", region).ToList();
        if (named.Count == 0)
        {
            return context.Fail<CollectionDays>(VisitProblems.UnknownVisits(window.Span, "collection")) ?? none;
        }

        if (region is null && named.Select(one => one.Region).OfType<string>().DistinctBy(NameFolding.Fold).Count() > 1)
        {
            return context.Fail<CollectionDays>(AimProblems.SeveralRegions(window.Span)) ?? none;
        }

        var possible = VisitDays.Of(visits, "collection", region, holidays).Where(day => day >= window.From && day <= window.To).ToList();
        if (possible.Count == 0)
        {
            return context.Fail<CollectionDays>(AimProblems.NoVisitBetween(window.Span)) ?? none;
        }

        context.Problems.Add(AimProblems.VisitNotChosen(window.Span, NumberText.Of(possible[0])));
        return none with { First = possible[0] };
    }
}
