namespace Byrelaw.Reporting.Tuning;

/// <summary>One row of the table of values.</summary>
/// <param name="Value">The value.</param>
/// <param name="Step">Its step.</param>
/// <param name="IsNow">The value in force.</param>
/// <param name="Marks">Whose value it is: <c>now</c>, <c>base</c>.</param>
/// <param name="SkipsBefore">Between the row before and this one there are values that let others in or keep others out.</param>
internal sealed record TuneRow(decimal Value, TuningStep Step, bool IsNow, ImmutableArray<string> Marks, bool SkipsBefore);

/// <summary>Picks the rows: the value in force, the nearest at which others may be used each way, the last of them, and the values that layers use.</summary>
internal static class TuneRows
{
    private const int EachWay = 6;

    public static ImmutableArray<TuneRow> Of(NumberTuning tuning, Rulebook rulebook)
    {
        var (below, above) = (UsableBands.Below(tuning), UsableBands.Above(tuning));
        var marks = LayerWords.Of(new RuleTuningSide(tuning.Number, rulebook)).Where(layer => layer.Version.Value is not null)
            .ToLookup(layer => Math.Round((decimal)layer.Version.Value!.Value, 6), layer => layer.Name);
        var bands = below.Concat(above).Select(tuning.ValueOf).ToHashSet();
        var values = Some(below).Concat(Some(above)).Select(tuning.ValueOf).Append(tuning.Current).Concat(marks.Select(mark => mark.Key)).Distinct().Order().ToList();
        var rows = ImmutableArray.CreateBuilder<TuneRow>();
        foreach (var value in values)
        {
            var isNow = value == tuning.Current;
            var skips = rows.Count > 0 && bands.Any(band => band > rows[^1].Value && band < value && !values.Contains(band));
            rows.Add(new TuneRow(value, tuning.Steps[tuning.StepAt(value)], isNow, [.. isNow ? ["now"] : Array.Empty<string>(), .. marks[value]], skips));
        }

        return rows.ToImmutable();
    }

    private static IEnumerable<int> Some(IReadOnlyList<int> bands) => bands.Count <= EachWay + 1 ? bands : bands.Take(EachWay).Append(bands[^1]);
}
