namespace Byrelaw.Workshop.Comparing;

/// <summary>Goes through all pairs of two rulebooks and says which differ, and in what.</summary>
internal static class Differing
{
    public static IEnumerable<Difference> In(Pairs pairs, Rulebook old, Rulebook @new) =>
    [
        .. ByName(Words(pairs)),
        .. ByName(Defines(pairs, old, @new)),
        .. Rules(pairs).OrderBy(rule => rule.Rule.List, StringComparer.Ordinal).ThenBy(rule => NameFolding.Fold(rule.Name), StringComparer.Ordinal),
        .. ByName(Prefers(pairs)),
        .. WaiverDetails.Between(pairs, old, @new),
        .. FarmDetails.Between(old, @new),
        .. PlanDetails.Between(old, @new),
    ];

    private static IEnumerable<Difference> Words(Pairs pairs) =>
        pairs.Kinds.Select(pair => WordDetails.Difference(pair, kind => kind.Name, VocabularyText.Of, WordDetails.Between))
            .Concat(pairs.Facts.Select(pair => WordDetails.Difference(pair, fact => fact.Name, VocabularyText.Of, WordDetails.Between)))
            .Concat(pairs.Spells.Select(pair => WordDetails.Difference(pair, spell => spell.Name, VocabularyText.Of, (_, _) => [])))
            .OfType<Difference>();

    private static IEnumerable<Difference> Defines(Pairs pairs, Rulebook old, Rulebook @new)
    {
        foreach (var pair in pairs.Defines)
        {
            List<Detail> details = pair is { Old: { } before, New: { } now }
                ? [.. DemandDetails.Between(before.Condition, now.Condition, pairs), .. RuleDetails.Readable(before.IsBroken, now.IsBroken)]
                : [];
            if (!pair.IsBoth || pair.Sameness != Sameness.SameName || details.Count > 0 || pair.Old!.Name != pair.New!.Name)
            {
                yield return new DefineDifference(pair.Old, pair.New, [.. UsersOf.Define(pair, pairs, old, @new)])
                {
                    OldName = pair.Old?.Name,
                    NewName = pair.New?.Name,
                    Sameness = pair.Sameness,
                    Details = [.. details],
                };
            }
        }
    }

    private static IEnumerable<RuleDifference> Rules(Pairs pairs)
    {
        foreach (var pair in pairs.Rules)
        {
            List<Detail> details = pair.IsBoth ? [.. RuleDetails.Between(pair.Old!, pair.New!, pairs)] : [];
            if (!pair.IsBoth || pair.Old!.Rule.Name != pair.New!.Rule.Name || details.Count > 0 || (pair.Old.Drop is null) != (pair.New.Drop is null))
            {
                yield return new RuleDifference(InForce(pair.Old), InForce(pair.New), pair.Old?.Drop, pair.New?.Drop)
                {
                    OldName = pair.Old?.Rule.Name,
                    NewName = pair.New?.Rule.Name,
                    Sameness = pair.Sameness,
                    Details = [.. details],
                };
            }
        }

        static Rule? InForce(RuleInForce? rule) => rule is { Drop: null } ? rule.Rule : null;
    }

    private static IEnumerable<Difference> Prefers(Pairs pairs)
    {
        foreach (var pair in pairs.Prefers)
        {
            List<Detail> details = pair is { Old: { } before, New: { } now } ? [.. RuleDetails.Between(before, now, pairs)] : [];
            if (!pair.IsBoth || pair.Old!.Name != pair.New!.Name || details.Count > 0)
            {
                yield return new PreferDifference(pair.Old, pair.New)
                {
                    OldName = pair.Old?.Name,
                    NewName = pair.New?.Name,
                    Sameness = pair.Sameness,
                    Details = [.. details],
                };
            }
        }
    }

    private static IOrderedEnumerable<Difference> ByName(IEnumerable<Difference> differences) =>
        differences.OrderBy(difference => NameFolding.Fold(difference.Name), StringComparer.Ordinal);
}
