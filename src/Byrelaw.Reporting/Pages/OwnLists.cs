using Byrelaw.Language.Floors;

namespace Byrelaw.Reporting.Pages;

/// <summary>The lists that a programme draws up and their days, what becomes of the animals on them, and where the floor stands in.</summary>
internal static class OwnLists
{
    /// <summary>An item each.</summary>
    public static IEnumerable<Wording> Of(Rulebook rulebook)
    {
        foreach (var date in rulebook.Programme?.Dates ?? [])
        {
            yield return LocalPractice.Said("Date", date.Name, $"{Dates.Long(date.Date)} ({ChangeHistory.Place(date.Span)})", null, null);
        }

        foreach (var choice in rulebook.Programme?.Choices ?? [])
        {
            yield return LocalPractice.Said("List", choice.List, AsWritten.Of(choice.Span), null, null);
            if (choice.Use == ListUse.ForLookingOnly)
            {
                yield return LocalPractice.Said("For looking only", choice.List, "nobody on it is cleared for a hormone or an embryo, and no floor lies under it", null, null);
            }
            else if (choice.Use == ListUse.NothingGiven)
            {
                yield return LocalPractice.Said("Nothing given", choice.List, "the floor bars nobody there; what it finds stands on her row", null, null);
            }
            else
            {
                var floor = StandingIn(rulebook, choice);
                if (floor.Count > 0)
                {
                    yield return LocalPractice.Said(
                        "The floor stands in", $"{Phrases.And(floor)}, for {choice.List}",
                        $"no safety rule of the list is proved to ask all that {(floor.Count == 1 ? "it asks" : "they ask")}; the floor is the program's own, and nobody's to change", null, null, byNobody: false);
                }
            }
        }
    }

    private static List<string> StandingIn(Rulebook rulebook, Choice choice)
    {
        var cover = new FloorCover(rulebook, choice.List);
        return [.. rulebook.Floor.Where(rule => cover.Of(rule).IsEmpty).Select(rule => rule.Name)];
    }
}
