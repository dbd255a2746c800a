using static Byrelaw.Workshop.Comparing.Details.RuleDetails;

namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>Which waivers are new, gone or changed. Two are one if they set aside one rule for one animal.</summary>
internal static class WaiverDetails
{
    public static IEnumerable<Difference> Between(Pairs pairs, Rulebook old, Rulebook @new)
    {
        foreach (var (before, now) in Matched(pairs, old, @new))
        {
            List<Detail> details = before is { } a && now is { } b
                ?
                [
                    .. One(Aspect.Until, NumberText.Of(a.Until), NumberText.Of(b.Until)),
                    .. One(Aspect.Because, a.Because, b.Because),
                    .. One(Aspect.Agreement, Agreed(a.Agreement), Agreed(b.Agreement)),
                ]
                : [];
            if (before is null || now is null || details.Count > 0)
            {
                yield return new WaiverDifference(before, now) { OldName = before?.Rule, NewName = now?.Rule, Details = [.. details] };
            }
        }
    }

    /// <summary>Waivers side by side: of several of one animal and rule, the first with the first, once those that are the same are out of the way.</summary>
    public static IEnumerable<(Waiver? Old, Waiver? New)> Matched(Pairs pairs, Rulebook old, Rulebook @new)
    {
        var left = @new.Waivers.ToList();
        var unmatched = new List<Waiver>();
        foreach (var waiver in old.Waivers)
        {
            var same = left.FindIndex(other => Key(waiver, pairs) == Key(other, null) && Text(waiver) == Text(other));
            if (same >= 0)
            {
                yield return (waiver, left[same]);
                left.RemoveAt(same);
            }
            else
            {
                unmatched.Add(waiver);
            }
        }

        foreach (var waiver in unmatched)
        {
            var like = left.FindIndex(other => Key(waiver, pairs) == Key(other, null));
            yield return (waiver, like >= 0 ? left[like] : null);
            if (like >= 0)
            {
                left.RemoveAt(like);
            }
        }

        foreach (var waiver in left)
        {
            yield return (null, waiver);
        }
    }

    private static (string, string) Key(Waiver waiver, Pairs? pairs) =>
        (NameFolding.Fold(pairs is null ? waiver.Rule : pairs.RuleNow(waiver.Rule)), waiver.Animal);

    private static string Text(Waiver waiver) => $"{NumberText.Of(waiver.Until)} {waiver.Because} {Agreed(waiver.Agreement)}";
}
