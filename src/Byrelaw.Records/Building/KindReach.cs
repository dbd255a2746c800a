namespace Byrelaw.Records.Building;

/// <summary>How far each kind of record reaches.</summary>
internal static class KindReach
{
    /// <summary>By kind id: the day that a person stated for all; else the latest entry of the kind, for where nobody says how
    /// far the records reach, a later row of another kind says nothing of this one.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says.</param>
    /// <param name="knownDay">The day the records reach as a whole.</param>
    /// <param name="runs">By kind id: entries of animals.</param>
    /// <param name="supposedAfter">Rows behind this line are supposed, and reach nowhere.</param>
    /// <param name="groups">Rows about the herd and about mobs that some animal is in: one of another mob is of nobody.</param>
    /// <param name="ofSheets">Lines of rows that are of sheets: what was ticked says nothing of how far a book was kept.</param>
    public static int[] Of(Vocabulary vocabulary, RecordKeeping? keeping, int knownDay, KindRun[] runs, IEnumerable<GroupRow> groups, int supposedAfter, IReadOnlySet<int> ofSheets)
    {
        var reach = new int[vocabulary.ById.Length];
        if (keeping?.UpTo is not null)
        {
            Array.Fill(reach, knownDay);
            StopWithSources(reach, vocabulary, keeping, knownDay);
            return reach;
        }

        for (var kind = 0; kind < reach.Length; kind++)
        {
            reach[kind] = Latest(runs[kind], supposedAfter, ofSheets);
        }

        foreach (var row in groups.Where(row => row.Line <= supposedAfter && !ofSheets.Contains(row.Line)))
        {
            reach[row.Kind] = Math.Max(reach[row.Kind], row.Day);
        }

        if (keeping is not null)
        {
            StopWithSources(reach, vocabulary, keeping, knownDay);
        }

        return reach;
    }

    /// <summary>A kind reaches no further than the earliest of the sources that can give it; where a person stated it of each of them, to that day, whatever
    /// the latest entry is.</summary>
    private static void StopWithSources(int[] reach, Vocabulary vocabulary, RecordKeeping keeping, int knownDay)
    {
        var (stated, isOpen) = (new int[reach.Length], new bool[reach.Length]);
        Array.Fill(stated, Day.End);
        foreach (var source in keeping.Sources)
        {
            var last = (keeping.RecordsTo is null ? source.UpTo : null) ?? (source.Rows == SourceRows.Animals ? source.AsAt : null);
            var given = SourceKinds.Of(source, keeping.Sources, vocabulary.Kinds).ToList();
            foreach (var kind in vocabulary.ById)
            {
                if (given.Exists(one => one is null || one.Id == kind.Declaration.Id))
                {
                    stated[kind.Id] = last is { } day ? Math.Min(stated[kind.Id], Day.Number(day)) : stated[kind.Id];
                    isOpen[kind.Id] |= last is null;
                }
            }
        }

        for (var kind = 0; kind < reach.Length; kind++)
        {
            reach[kind] = stated[kind] < Day.End && !isOpen[kind] ? Math.Min(knownDay, stated[kind]) : Math.Min(reach[kind], stated[kind]);
        }
    }

    private static int Latest(KindRun run, int supposedAfter, IReadOnlySet<int> ofSheets)
    {
        var latest = Day.Start;
        for (var place = 0; place < run.Days.Length; place++)
        {
            latest = run.Lines[place] <= supposedAfter && run.Days[place] > latest && !ofSheets.Contains(run.Lines[place]) ? Math.Max(latest, run.Days[place]) : latest;
        }

        return latest;
    }
}
