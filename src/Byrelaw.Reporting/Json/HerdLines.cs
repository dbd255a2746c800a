namespace Byrelaw.Reporting.Json;

/// <summary>Where an animal's line of many herds belongs.</summary>
public sealed record OfHerdJson(string Herd, string List, int? Session, string JudgedFrom, string JudgedTo);

/// <summary>A herd's own line among those of many.</summary>
/// <param name="Herd">Its name.</param>
/// <param name="Animals">How many there are.</param>
/// <param name="Rulebook">The fingerprint of the rules.</param>
/// <param name="Records">The fingerprint of its records.</param>
/// <param name="KnownDay">The day the records reach.</param>
/// <param name="Reach">Promised kinds that reach less far, with their day.</param>
/// <param name="Lists">How many have each answer, list by list.</param>
/// <param name="SetAside">Kinds whose promises do not count.</param>
/// <param name="Doubts">How many things are doubted.</param>
/// <param name="Errors">How many rows or cells of its records cannot be read.</param>
public sealed record HerdJson(
    string Herd, int Animals, string Rulebook, string Records, string KnownDay, IReadOnlyDictionary<string, string> Reach,
    IReadOnlyList<CountsOfListJson> Lists, IReadOnlyList<string> SetAside, int Doubts, int Errors);

/// <summary>How many have each answer on one list.</summary>
public sealed record CountsOfListJson(string List, int? Session, string JudgedFrom, string JudgedTo, CountsJson Counts, bool IsBroken);

/// <summary>A herd that cannot be judged, and why.</summary>
public sealed record NotJudgedJson(string Herd, string NotJudged);

/// <summary>Many herds for programs, a line each: one for every animal, list and session, then one for the herd.</summary>
public static class HerdLines
{
    /// <summary>The lines of a herd's animals, made one by one: the herd, the list and its days, and what <c>draft --format json</c> says of the animal.</summary>
    public static IEnumerable<string> OfAnimals(Draft draft, string herd)
    {
        ArgumentNullException.ThrowIfNull(draft);
        foreach (var list in draft.Lists)
        {
            var report = new ListReport(draft, list);
            var head = SeenJson.Of(new OfHerdJson(herd, report.Name, list.Session, JsonText.Iso(list.Choice.JudgedFrom), JsonText.Iso(list.Choice.JudgedTo)), JsonShapes.OneLine.OfHerdJson);
            foreach (var animal in list.Animals)
            {
                yield return string.Concat(head.AsSpan(0, head.Length - 1), ",", SeenJson.Of(JsonText.Animal(animal, report), JsonShapes.OneLine.AnimalJson).AsSpan(1));
            }
        }
    }

    /// <summary>The herd's own line.</summary>
    public static string OfHerd(Draft draft, string herd)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var (coverage, kinds) = (draft.Herd.Coverage, draft.Herd.Vocabulary.Kinds);
        var reach = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var kind in kinds.Where(kind => coverage.Since[kind.Id] < Day.End && coverage.Reach[kind.Id] < coverage.KnownDay && coverage.Reach[kind.Id] > Day.Start))
        {
            reach.Add(kind.Name, JsonText.Iso(Day.Date(coverage.Reach[kind.Id])));
        }

        return SeenJson.Of(
            new HerdJson(
                herd, draft.Herd.Count, Fingerprints.RulebookOf(draft), draft.Herd.Fingerprint, ReachWords.Iso(draft.Herd), reach,
                [.. draft.Lists.Select(list => new CountsOfListJson(new ListReport(draft, list).Name, list.Session, JsonText.Iso(list.Choice.JudgedFrom), JsonText.Iso(list.Choice.JudgedTo), JsonText.Counts(list), list.IsBroken))],
                [.. kinds.Where(kind => coverage.SetAside.Length > 0 && coverage.SetAside[kind.Id] < Day.End).Select(kind => kind.Name)],
                draft.Herd.Doubted.Length, draft.Herd.Problems.Count(problem => problem.Severity == Severity.Error)),
            JsonShapes.OneLine.HerdJson);
    }

    /// <summary>A herd that cannot be judged.</summary>
    public static string NotJudged(string herd, string why) => SeenJson.Of(new NotJudgedJson(herd, why), JsonShapes.OneLine.NotJudgedJson);
}
