namespace Byrelaw.Records.Sources;

/// <summary>What a source that cannot be read, or one of its lines whose column is not there, might have said: none of it is known of anyone.</summary>
/// <param name="all">All sources of the farm.</param>
/// <param name="vocabulary">The words.</param>
/// <param name="animals">Takes what is true of no animal for certain.</param>
/// <param name="events">Takes what may have happened to anybody.</param>
internal sealed class WhatIsNotThere(ImmutableArray<RecordSource> all, Vocabulary vocabulary, AnimalRows animals, EventRows events)
{
    private static readonly string[] OfAnimals = ["born", "sex", "mob", "parity", "parity on"];

    /// <summary>Adds it.</summary>
    /// <param name="place">The source's place.</param>
    /// <param name="opened">The source.</param>
    public void Suspend(int place, OpenedSource opened)
    {
        var (source, at) = (opened.Source, new RowPlace(place, 0));
        if (opened.Read is not null)
        {
            Suspend(opened.WithoutColumn, source, at);
            return;
        }

        foreach (var kind in SourceKinds.Of(source, all, vocabulary.Kinds))
        {
            events.AddUnreadable(at, kind?.Name);
        }

        // Nobody can tell what a line that cannot be read would have said.
        foreach (var name in source.IsBroken ? OfAnimals.Concat(vocabulary.Facts.Select(fact => fact.Name)) : Said(source))
        {
            animals.AddNotKnown(name);
        }
    }

    private void Suspend(ImmutableArray<SourceColumn> missing, RecordSource source, RowPlace at)
    {
        foreach (var what in missing.Select(column => column.What))
        {
            if (what is KindTarget { Kind: var kind })
            {
                events.AddUnreadable(at, kind.Name);
            }
            else if (source.Rows == SourceRows.Animals)
            {
                animals.AddNotKnown(what.Name);
            }
        }
    }

    private static IEnumerable<string> Said(RecordSource source) => source.Rows != SourceRows.Animals ? []
        : source.Columns.Select(column => column.What).Concat(source.EveryRow.Select(every => every.What))
            .Where(what => what is FactTarget || (what is LandedTarget landed && OfAnimals.Contains(landed.Column))).Select(what => what.Name);
}
