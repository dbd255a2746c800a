namespace Byrelaw.Language.Reasoning;

/// <summary>What has been asked of one animal on the way of a search: as long as it can be met together, more is added; where not, it says why.</summary>
internal sealed class Demands(Quantities quantities)
{
    private readonly Consistency _consistency = new(quantities);
    private readonly TextDemands _ofTexts = new(quantities);
    private readonly List<Bound> _bounds = [];
    private readonly List<OneOf> _texts = [];
    private readonly List<Condition> _conflict = [];

    /// <summary>The conditions that contradicted each other, in the order in which they were met.</summary>
    public IReadOnlyList<Condition> Conflict => _conflict;

    /// <summary>Whether the question has taken so much work that it is given up.</summary>
    public bool IsTired => _consistency.IsTired;

    /// <summary>How much work all questions took.</summary>
    public long Steps => _ofTexts.Steps + _consistency.Steps;

    /// <summary>All that has been asked.</summary>
    public Together Together => new([.. _bounds], [.. _texts]);

    /// <summary>The next question begins.</summary>
    public void Clear()
    {
        _bounds.Clear();
        _texts.Clear();
        _conflict.Clear();
        _consistency.Rest();
    }

    /// <summary>Where the way is now.</summary>
    public Place Here => new(_bounds.Count, _texts.Count);

    /// <summary>Goes back to an earlier place.</summary>
    public void GoBack(Place to)
    {
        _bounds.RemoveRange(to.Bounds, _bounds.Count - to.Bounds);
        _texts.RemoveRange(to.Texts, _texts.Count - to.Texts);
    }

    /// <summary>Adds one; false where it contradicts what there is, and then that is told.</summary>
    public bool Add(Together together) => Take([together], 1, tell: true);

    /// <summary>Adds all of them, or none, and tells nothing.</summary>
    public bool AddIfTheyFit(List<Together> all)
    {
        var before = Here;
        if (Take(all, all.Count, tell: false))
        {
            return true;
        }

        GoBack(before);
        return false;
    }

    /// <summary>Adds all of them; where they contradict each other, as many as it takes, so that the contradiction told is the first one met.</summary>
    public bool AddAll(List<Together> all)
    {
        var before = Here;
        if (AddIfTheyFit(all))
        {
            return true;
        }

        var (fits, fails) = (0, all.Count);
        while (fits + 1 < fails)
        {
            var middle = (fits + fails) / 2;
            (fits, fails) = Take(all, middle, tell: false) ? (middle, fails) : (fits, middle);
            GoBack(before);
        }

        return Take(all, fails, tell: true);
    }

    private bool Take(List<Together> all, int count, bool tell)
    {
        var before = Here;
        for (var i = 0; i < count; i++)
        {
            _bounds.AddRange(all[i].Bounds);
            _texts.AddRange(all[i].Texts);
        }

        var conflict = (_texts.Count > before.Texts ? _ofTexts.Contradiction(_texts, before.Texts)?.Select(text => text.From) : null)
            ?? (_bounds.Count > before.Bounds ? _consistency.Contradiction(_bounds)?.Select(bound => bound.From) : null);
        if (conflict is not null && tell)
        {
            Blame(conflict);
        }

        return conflict is null;
    }

    private void Blame(IEnumerable<Condition?> conditions)
    {
        foreach (var condition in conditions)
        {
            if (condition is not null && !_conflict.Exists(other => ReferenceEquals(other, condition)))
            {
                _conflict.Add(condition);
            }
        }
    }

    /// <summary>How far the way had gone.</summary>
    public readonly record struct Place(int Bounds, int Texts);
}
