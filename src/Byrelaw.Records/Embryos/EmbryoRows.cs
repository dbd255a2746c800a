namespace Byrelaw.Records.Embryos;

/// <summary>Finds the rows that say what became of embryos.</summary>
internal static class EmbryoRows
{
    private const string Detail = "embryo";

    /// <summary>All of them, by day and line; how many transfers name no embryo besides.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="stages">What was read, not sorted yet: of two transfers on one day a herd keeps one.</param>
    public static (ImmutableArray<EmbryoRow> Rows, int Unnamed) Of(Vocabulary vocabulary, IReadOnlyList<EventStage> stages)
    {
        var rows = stages.SelectMany(stage => stage.Embryos).ToList();
        var unnamed = 0;
        foreach (var kind in vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Transfer))
        {
            var place = kind.Details.ToList().FindIndex(detail => NameFolding.Fold(detail.Name) == Detail);
            foreach (var stage in stages)
            {
                var labels = place < 0 ? [] : Labels(stage, place);
                foreach (var transfer in stage.Events[kind.Id].All())
                {
                    if (labels.TryGetValue(transfer.Line, out var cell))
                    {
                        rows.Add(new EmbryoRow(cell.State == FactState.Known ? cell.Text : null, kind, transfer.Animal, Day.Date(transfer.Day), transfer.Line));
                    }
                    else
                    {
                        unnamed++;
                    }
                }
            }
        }

        return ([.. rows.OrderBy(row => row.Date ?? LocalDate.MinIsoValue).ThenBy(row => row.Line)], unnamed);
    }

    // Details of other kinds may have the same place: only those of a transfer's line are asked for.
    private static Dictionary<int, DetailCell> Labels(EventStage stage, int place)
    {
        var labels = new Dictionary<int, DetailCell>();
        foreach (var cell in stage.Details.All())
        {
            if (cell.Detail == place)
            {
                labels[cell.Line] = cell;
            }
        }

        return labels;
    }
}
