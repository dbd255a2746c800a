namespace Byrelaw.Reporting.Verifying;

/// <summary>An animal of which two drafts say something different.</summary>
/// <param name="List">The list, with its session where there are several.</param>
/// <param name="Animal">Her number.</param>
/// <param name="Was">Her answer's key in the kept draft; null where she was not on the list.</param>
/// <param name="Now">The same, judged anew.</param>
public sealed record AnswerDifference(string List, string Animal, string? Was, string? Now)
{
    /// <summary>Every such animal: another answer, or the same with other dates, reasons, points or evidence.</summary>
    public static IReadOnlyList<AnswerDifference> Between(DraftJson kept, DraftJson now)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(now);
        var (was, @is) = (ByWho(kept), ByWho(now));
        return [.. was.Keys.Concat(@is.Keys.Where(who => !was.ContainsKey(who)))
            .Where(who => AnswersDigest.Of(was.GetValueOrDefault(who)) != AnswersDigest.Of(@is.GetValueOrDefault(who)))
            .Select(who => new AnswerDifference(who.List, who.Animal, was.GetValueOrDefault(who)?.Answer, @is.GetValueOrDefault(who)?.Answer))];
    }

    private static Dictionary<(string List, string Animal), AnimalJson> ByWho(DraftJson draft)
    {
        var animals = new Dictionary<(string, string), AnimalJson>();
        var several = draft.Lists.Select(list => list.Session).Distinct().Count() > 1;
        foreach (var list in draft.Lists)
        {
            foreach (var animal in list.Animals ?? [])
            {
                animals[(several && list.Session is { } session ? $"{list.List}, session {session}" : list.List, animal.Animal)] = animal;
            }
        }

        return animals;
    }
}
