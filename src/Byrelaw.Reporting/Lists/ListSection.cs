using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Lists;

/// <summary>What the animals of a section have in common.</summary>
public enum SectionKind
{
    /// <summary>They have a place in this session.</summary>
    Named,

    /// <summary>They have a place in another session.</summary>
    NamedElsewhere,

    /// <summary>They could be named, and have no place.</summary>
    Spare,

    /// <summary>This list lets them through, and they are named for no session and spare for none: another check, or a booking, stands in the way.</summary>
    NotNamed,

    /// <summary>Ready, on a list for which nobody is named.</summary>
    Ready,

    /// <summary>On course, on such a list.</summary>
    OnCourse,

    /// <summary>Something is to be found out, and there is time.</summary>
    Ask,

    /// <summary>Something is to be found out, and it takes longer than is left.</summary>
    AskNoLongerInTime,

    /// <summary>Not on the judging days, but later.</summary>
    Later,

    /// <summary>Not.</summary>
    No,
}

/// <summary>Animals of a list that stand together on its page.</summary>
/// <param name="Kind">What they have in common.</param>
/// <param name="Session">Of those named elsewhere: for which session.</param>
/// <param name="Animals">In the order of the page: by number, those who are spare in the order in which they take a place.</param>
public sealed record ListSection(SectionKind Kind, int? Session, ImmutableArray<AnimalJudgement> Animals)
{
    /// <summary>The place of the page that links lead to.</summary>
    public string Anchor => Kind switch
    {
        SectionKind.Named => "named",
        SectionKind.NamedElsewhere => $"named-{Session}",
        SectionKind.Spare => "spare",
        SectionKind.NotNamed => "not-named",
        SectionKind.Ready => "ready",
        SectionKind.OnCourse => "on-course",
        SectionKind.Ask => "ask",
        SectionKind.AskNoLongerInTime => "ask-late",
        SectionKind.Later => "later",
        _ => "no",
    };

    /// <summary>A list in sections: every animal stands in exactly one, and none is empty.</summary>
    /// <param name="list">The list.</param>
    /// <param name="named">Every session by name; none where nobody is named.</param>
    public static ImmutableArray<ListSection> Of(ListReport list, ImmutableArray<NamedSession> named)
    {
        ArgumentNullException.ThrowIfNull(list);
        var here = HereIn(list, named);
        var places = new Dictionary<int, int>();
        var spares = new List<int>();
        if (here is not null)
        {
            foreach (var session in named)
            {
                foreach (var animal in session.Named)
                {
                    places.TryAdd(animal.Animal, session.Number);
                }
            }

            // Who takes a place here first, in their order; then those who could serve an earlier or a later session, session by session.
            spares.AddRange(named.OrderBy(session => session == here ? 0 : 1).SelectMany(session => session.Spares).Select(animal => animal.Animal));
        }

        return
        [
            .. list.List.Animals.GroupBy(animal => KindOf(new AnimalReport(list, animal), here, places, spares))
                .OrderBy(group => group.Key.Kind).ThenBy(group => group.Key.Session)
                .Select(group => new ListSection(group.Key.Kind, group.Key.Session, group.Key.Kind == SectionKind.Spare ? [.. group.OrderBy(animal => spares.IndexOf(animal.Animal))] : [.. group])),
        ];
    }

    /// <summary>The session whose recipients a list is; null for any other list, or where nobody is named.</summary>
    public static NamedSession? HereIn(ListReport list, ImmutableArray<NamedSession> named)
    {
        ArgumentNullException.ThrowIfNull(list);
        return list.Rulebook.Programme is { } programme && ProgrammeLists.Recipients(programme)?.List == list.Name ? named.FirstOrDefault(session => session.Number == list.List.Session) : null;
    }

    /// <summary>The answer comes first: nobody whom this list does not let through stands among the named.</summary>
    private static (SectionKind Kind, int? Session) KindOf(AnimalReport report, NamedSession? here, Dictionary<int, int> places, List<int> spares) => report.Animal.Answer switch
    {
        Answer.Ready when here is null => (SectionKind.Ready, null),
        Answer.OnCourse when here is null => (SectionKind.OnCourse, null),
        Answer.Ready or Answer.OnCourse when places.TryGetValue(report.Animal.Animal, out var session) => session == here!.Number ? (SectionKind.Named, null) : (SectionKind.NamedElsewhere, session),
        Answer.Ready or Answer.OnCourse when spares.Contains(report.Animal.Animal) => (SectionKind.Spare, null),
        Answer.Ready or Answer.OnCourse => (SectionKind.NotNamed, null),
        Answer.Later => (SectionKind.Later, null),
        Answer.Ask => (report.IsOutOfTime ? SectionKind.AskNoLongerInTime : SectionKind.Ask, null),
        _ => (SectionKind.No, null),
    };
}
