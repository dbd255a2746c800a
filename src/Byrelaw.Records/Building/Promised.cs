namespace Byrelaw.Records.Building;

/// <summary>A farm's promises, kind by kind: from when on, up to when, and which days in between they leave out.</summary>
/// <param name="Since">By kind id: the first day; <see cref="Day.End"/> where nothing is promised.</param>
/// <param name="Reach">By kind id: the last day of the last stretch, or as far as the records reach.</param>
/// <param name="Holes">Between two stretches of a kind, and from its reach to the day the records reach as a whole.</param>
internal sealed record Promised(int[] Since, int[] Reach, List<Hole> Holes)
{
    /// <summary>Works them out.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says; null for nothing.</param>
    /// <param name="reach">By kind id: how far its records reach where no promise ends before.</param>
    /// <param name="knownDay">The day the records reach as a whole.</param>
    public static Promised Of(Vocabulary vocabulary, RecordKeeping? keeping, int[] reach, int knownDay)
    {
        var promised = new Promised(new int[vocabulary.ById.Length], [.. reach], []);
        Array.Fill(promised.Since, Day.End);
        var stretches = (keeping?.Complete ?? []).SelectMany(complete => complete.Kinds.Select(kind =>
            (Kind: kind.Id, From: Day.Number(complete.Since), To: complete.Until is { } until ? Day.Number(until) : Day.End)));
        foreach (var ofKind in stretches.GroupBy(stretch => stretch.Kind))
        {
            promised.Add(ofKind.Key, [.. ofKind.Select(stretch => (stretch.From, stretch.To)).OrderBy(stretch => stretch.From)], keeping!.UpTo is not null, knownDay);
        }

        return promised;
    }

    private void Add(int kind, List<(int From, int To)> stretches, bool isReachSaid, int knownDay)
    {
        // What a person stated holds; where nobody did, an entry has to show how far the book was kept.
        var last = stretches[^1].To;
        Reach[kind] = last == Day.End ? Reach[kind] : isReachSaid ? Math.Min(Reach[kind], last) : Math.Min(last, knownDay);
        if (Reach[kind] == Day.Start)
        {
            return;
        }

        if (stretches.Count > 1)
        {
            // An earlier stretch says itself how far it holds.
            Reach[kind] = Math.Max(Reach[kind], Math.Min(stretches[^2].To, knownDay));
        }

        Since[kind] = stretches[0].From;
        for (var i = 1; i < stretches.Count; i++)
        {
            if (stretches[i].From > stretches[i - 1].To + 1)
            {
                Holes.Add(new Hole(-1, kind, stretches[i - 1].To + 1, stretches[i].From - 1));
            }
        }

        if (Reach[kind] < knownDay)
        {
            Holes.Add(new Hole(-1, kind, Reach[kind] + 1, knownDay));
        }
    }
}
