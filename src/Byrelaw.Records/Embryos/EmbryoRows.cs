namespace Byrelaw.Records.Embryos;

/// <summary>Finds the rows that say what became of embryos.</summary>
/// <param name="vocabulary">The words.</param>
/// <param name="stages">What was read, not sorted yet: of two transfers on one day a herd keeps one.</param>
/// <param name="notRead">Headings of columns that nobody reads.</param>
internal sealed class EmbryoRows(Vocabulary vocabulary, IReadOnlyList<EventStage> stages, IEnumerable<string> notRead)
{
    private const string Detail = "embryo";

    // A label may stand where nobody reads it.
    private readonly bool _mayHideLabels = notRead.Any(MayName);

    /// <summary>All of them, by day and line; how many transfers name no embryo besides.</summary>
    public (ImmutableArray<EmbryoRow> Rows, int Unnamed) Find()
    {
        var rows = stages.SelectMany(stage => stage.Embryos).ToList();
        var unnamed = 0;
        foreach (var kind in vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Transfer))
        {
            var place = kind.Details.ToList().FindIndex(detail => NameFolding.Fold(detail.Name) == Detail);
            foreach (var stage in stages)
            {
                var labels = place < 0 ? [] : Labels(stage, place);
                var transfers = stage.Events[kind.Id].All().Select(row => (row.Animal, row.Day, row.Line)).Concat(stage.Groups.Where(row => row.Kind == kind.Id).Select(row => (Animal: -1, row.Day, row.Line)));
                foreach (var (animal, day, line) in transfers)
                {
                    if (labels.TryGetValue(line, out var cell))
                    {
                        rows.Add(new EmbryoRow(cell.State == FactState.Known ? cell.Text : null, kind, animal, Day.Date(day), line));
                    }
                    else if (_mayHideLabels)
                    {
                        rows.Add(new EmbryoRow(null, kind, animal, Day.Date(day), line));
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

    /// <summary>Whether labels of embryos may stand under a heading: <c>Embryo no</c>, <c>Straw</c>, <c>embrio</c>.</summary>
    private static bool MayName(string heading) => NearestName.OnlyOne(heading, [Detail]) is not null
        || NameFolding.Fold(heading).Split(' ', '_', '-', '.').Any(word => word is Detail or "embryos" or "straw" or "straws");

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
