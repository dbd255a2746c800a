namespace Byrelaw.Checking.Comparing;

/// <summary>A made-up animal with what is on record of her.</summary>
internal sealed record Candidate(MadeUpAnimal Animal, ImmutableArray<MadeUpRow> Rows);

/// <summary>Judges made-up animals by the old and by the new version of a rule, many at once.</summary>
internal sealed class TwoTrials(Rulebook old, Rulebook @new, Choice choice)
{
    public LocalDate Day => choice.JudgedFrom;

    /// <summary>Those that the two say something different of, each with what they say; true where there is no such rule.</summary>
    public List<(Candidate Candidate, Truth Old, Truth New)> Differing(IReadOnlyList<Candidate> candidates) =>
        [.. candidates.Zip(By(old, candidates), By(@new, candidates)).Where(told => told.Second != told.Third)];

    /// <summary>Each with nothing on record that the difference does not need.</summary>
    public List<(Candidate Candidate, Truth Old, Truth New)> Smallest(List<(Candidate Candidate, Truth Old, Truth New)> differing)
    {
        var most = differing.Count == 0 ? 0 : differing.Max(told => told.Candidate.Rows.Length);
        for (var place = most - 1; place >= 0; place--)
        {
            var row = place;
            Try(candidate => row < candidate.Rows.Length ? candidate with { Rows = candidate.Rows.RemoveAt(row) } : candidate);
        }

        foreach (var fact in differing.SelectMany(told => told.Candidate.Animal.Facts.Keys).Distinct().Order(StringComparer.Ordinal).ToList())
        {
            Try(candidate => candidate with { Animal = candidate.Animal with { Facts = candidate.Animal.Facts.Remove(fact) } });
        }

        return differing;

        void Try(Func<Candidate, Candidate> smaller)
        {
            var tried = differing.ConvertAll(told => smaller(told.Candidate));
            differing = [.. differing.Zip(tried.Zip(By(old, tried), By(@new, tried))).Select(pair =>
                (pair.First.Old, pair.First.New) == (pair.Second.Second, pair.Second.Third) ? pair.Second : pair.First)];
        }
    }

    private List<Truth> By(Rulebook rulebook, IReadOnlyList<Candidate> candidates)
    {
        if (rulebook.Rules.IsEmpty || candidates.Count == 0)
        {
            return [.. candidates.Select(_ => Truth.True)];
        }

        var herd = new MadeUpHerd([.. candidates.Select(candidate => candidate.Animal)], [.. candidates.SelectMany(candidate => candidate.Rows)], Day).Read(rulebook.Vocabulary);
        var truths = new Judge(rulebook, herd).TruthsOn(choice, Day)[^1];
        return [.. candidates.Select(candidate => truths[herd.Find(candidate.Animal.Number)])];
    }
}
