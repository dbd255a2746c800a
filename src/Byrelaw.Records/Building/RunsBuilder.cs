namespace Byrelaw.Records.Building;

/// <summary>Sorts rows into a run of days for each kind, animal by animal.</summary>
/// <param name="vocabulary">The words.</param>
/// <param name="animals">How many there are.</param>
/// <param name="stages">What each thread has read; what has become part of a run is let go.</param>
/// <param name="expanded">What rows of mobs and of the herd mean for each animal.</param>
/// <param name="details">What more is on record of entries.</param>
internal sealed class RunsBuilder(Vocabulary vocabulary, int animals, EventStage[] stages, EventStage expanded, EntryDetails details)
{
    private readonly List<Gap>[] _doubts = [.. vocabulary.ById.Select(_ => new List<Gap>())];

    /// <summary>By kind id.</summary>
    public KindRun[] Runs { get; } = new KindRun[vocabulary.ById.Length];

    /// <summary>As <see cref="Herd.OwnRuns"/>.</summary>
    public KindRun?[] OwnRuns { get; } = new KindRun?[vocabulary.ById.Length];

    /// <summary>Entries that may or may not be of a kind with a filter.</summary>
    public IEnumerable<Gap> Doubts => _doubts.SelectMany(doubts => doubts);

    /// <summary>Builds the runs of some kinds.</summary>
    /// <param name="which">Of which.</param>
    /// <param name="isOfSpell">By kind id: whether it begins or ends a spell, so that an animal's own rows are wanted apart.</param>
    public void Build(Func<Kind, bool> which, bool[] isOfSpell)
    {
        Kind[] kinds = [.. vocabulary.Kinds.Where(which)];
        Parallel.For(0, kinds.Length, i =>
        {
            Runs[kinds[i].Id] = KindRuns.Of(kinds[i], animals, [.. stages, expanded]);
            if (isOfSpell[kinds[i].Id] && expanded.Events[kinds[i].Id].Count > 0)
            {
                OwnRuns[kinds[i].Id] = KindRuns.Of(kinds[i], animals, stages);
            }

            BuildFiltered(kinds[i]);
            Array.ForEach(stages, stage => stage.LetGo(kinds[i].Id));
        });
    }

    /// <summary>Each kind with a filter is entries of this one; what may or may not be one of its entries is in doubt.</summary>
    private void BuildFiltered(Kind kind)
    {
        foreach (var filtered in vocabulary.Filtered)
        {
            if (filtered.Filter!.Of.Id == kind.Id)
            {
                Runs[filtered.Id] = FilteredRuns.Of(filtered, animals, [.. stages, expanded], details, _doubts[filtered.Id]);
            }
        }
    }
}
