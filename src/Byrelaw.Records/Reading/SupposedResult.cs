namespace Byrelaw.Records.Reading;

/// <summary>One supposed result, as a run holds it.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Day">Its day number.</param>
/// <param name="Value">Of a measure, in the declared unit.</param>
/// <param name="Answer">Of a test, the place of its answer; null for a measure.</param>
/// <param name="Cells">What its details are.</param>
internal sealed record SupposedResult(int Animal, int Day, double Value, byte? Answer, ImmutableArray<DetailCell> Cells)
{
    /// <summary>A detail, by its place; missing where nothing is said of it.</summary>
    public DetailCell Cell(int place)
    {
        foreach (var cell in Cells)
        {
            if (cell.Detail == place)
            {
                return cell;
            }
        }

        return new DetailCell(0, place, FactState.Missing, 0, null);
    }

    /// <summary>Rows of one kind; null where one of them is more than a plain result of an animal that is there, and has no other of that day.</summary>
    public static List<SupposedResult>? Of(Herd herd, Kind kind, IEnumerable<SupposedRow> rows)
    {
        var results = new List<SupposedResult>();
        foreach (var row in rows)
        {
            var (animal, day) = (herd.Find(row.Animal), Herds.Day.Number(row.Date));
            if (animal < 0 || herd.Membership.At(animal, day) != Presence.In || herd.BornLatest[animal] > day || herd.Runs[kind.Id].DaysOf(animal).Contains(day)
                || CellsOf(kind, row) is not { } cells || One(kind, row) is not var (value, answer))
            {
                return null;
            }

            results.Add(new SupposedResult(animal, day, value, answer, cells));
        }

        return results.DistinctBy(one => (one.Animal, one.Day)).Count() == results.Count ? results : null;
    }

    private static (double Value, byte? Answer)? One(Kind kind, SupposedRow row)
    {
        if (kind is TestKind test)
        {
            var answer = test.Answers.IndexOf(row.Value);
            return answer < 0 ? null : (0, (byte)answer);
        }

        return kind is MeasureKind measure && row.Unit == (measure.Unit?.Symbol ?? "") && double.TryParse(row.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            && (measure.Scale ?? measure.Plausible) is var limits && (limits is null || (value >= limits.From && value <= limits.To)) ? (value, null) : null;
    }

    private static ImmutableArray<DetailCell>? CellsOf(Kind kind, SupposedRow row)
    {
        var cells = ImmutableArray.CreateBuilder<DetailCell>();
        foreach (var (name, value) in row.Details)
        {
            var place = 0;
            while (place < kind.Details.Length && NameFolding.Fold(kind.Details[place].Name) != NameFolding.Fold(name))
            {
                place++;
            }

            if (place == kind.Details.Length || kind.Details[place].Type is not (FactType.OneOf or FactType.Text))
            {
                return null;
            }

            cells.Add(new DetailCell(0, place, FactState.Known, 0, value));
        }

        return cells.ToImmutable();
    }
}
