namespace Byrelaw.Judging.Promises;

/// <summary>Words that a farm's own file declares, or leaves out, and its records hold, and that no rule reads: shown, because somebody may have thought that they were.</summary>
internal static class WordsOnRecord
{
    /// <summary>One doubt for all of them; null where there is none.</summary>
    /// <param name="rulebook">The rules.</param>
    /// <param name="herd">The records.</param>
    /// <param name="told">Words of which worse is told.</param>
    public static NotReadByRules? NotRead(Rulebook rulebook, Herd herd, IReadOnlySet<string> told)
    {
        var own = rulebook.Files.FirstOrDefault();
        var found = herd.Vocabulary.Kinds
            .Where(kind => own is not null && ReferenceEquals(kind.Declared.File, own) && kind is not EventKind { Effect: not HerdEffect.None } && !told.Contains(NameFolding.Fold(kind.Name)))
            .Select(kind => (Kind: kind, Entries: Entries(herd, kind))).Where(one => one.Entries > 0).ToList();
        ImmutableArray<WordLeftOut> leftOut = [.. herd.WordsLeftOut.Where(left => !told.Contains(NameFolding.Fold(left.Word)))];
        if (found.Count == 0 && leftOut.IsEmpty)
        {
            return null;
        }

        var read = found.Count == 0 ? [] : Read(rulebook);
        ImmutableArray<(Kind Kind, int Entries)> notRead = [.. found.Where(one => !read.Contains(one.Kind.Id))];
        return notRead.IsEmpty && leftOut.IsEmpty ? null : new NotReadByRules(notRead) { LeftOut = leftOut };
    }

    private static int Entries(Herd herd, Kind kind) =>
        herd.Runs[kind.Id].Days.Length + (herd.MobRuns[kind.Id]?.Days.Length ?? 0) + (herd.GroupRuns[kind.Id]?.Days.Length ?? 0);

    /// <summary>Every kind that a rule, a preference, a method, an expectation or a spell looks at.</summary>
    private static HashSet<int> Read(Rulebook rulebook)
    {
        var conditions = rulebook.Rules.Concat(rulebook.Floor).SelectMany(rule => rule.AppliesTo is { } audience ? [rule.Needs, audience] : new[] { rule.Needs })
            .Concat(rulebook.Prefers.Select(prefer => prefer.Condition)).Concat(rulebook.Plans.Methods.Select(method => method.Suits).OfType<Condition>());
        var kinds = conditions.SelectMany(condition => condition.Leaves(rulebook)).Select(leaf => new ConditionParts(leaf)).SelectMany(parts => parts.Kinds.Concat(parts.WindowKinds))
            .Concat(rulebook.Expectations.SelectMany(Of))
            .Concat(rulebook.Vocabulary.Spells.SelectMany(spell => new Kind[] { spell.From, spell.Until }));
        return [.. kinds.Select(kind => kind.Declaration.Id)];
    }

    private static IEnumerable<Kind> Of(RecordExpectation expectation) => expectation switch
    {
        EntryExpectation entries => entries.Others.Add(entries.Every).Select(one => one.Kind).Concat(entries.Else),
        RateExpectation rate => rate.Else.Add(rate.Kind),
        _ => expectation.Else,
    };
}
