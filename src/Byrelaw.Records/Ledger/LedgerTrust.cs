namespace Byrelaw.Records.Ledger;

/// <summary>
/// What becomes of promises where the ledger cannot be trusted: its chain does not hold, or rows, or the log of judging, name a sheet that it does not have. Nobody knows then which papers are
/// out, so all kinds that sheets write are complete no longer than to the day before the last line that holds.
/// </summary>
internal static class LedgerTrust
{
    /// <summary>The promises that are left, and whether the ledger is broken.</summary>
    public static (RecordKeeping? Keeping, bool IsBroken) Of(RecordKeeping? keeping, SheetLedger? ledger, EventStage[] stages, Vocabulary vocabulary)
    {
        var known = (ledger?.Sheets ?? []).Select(sheet => sheet.Number).ToHashSet(StringComparer.Ordinal);
        var strange = stages.SelectMany(stage => stage.SheetRows).Where(row => !known.Contains(row.SheetRow.Split(':')[0].Trim())).ToList();
        var seen = (keeping?.SheetsNamed ?? []).Where(sheet => !known.Contains(sheet.Number)).ToList();
        if (ledger is not { IsBroken: true } && strange.Count == 0 && seen.Count == 0)
        {
            return (keeping, false);
        }

        // A sheet that is lost was written on the day of the last line that holds, or later; what was done by it, and what the log says of it, may be of an earlier day.
        var last = strange.Select(row => row.Day).Concat(seen.Select(sheet => Day.Number(sheet.Day))).Concat(ledger?.LastGoodDay is { } good ? [Day.Number(good)] : [])
            .DefaultIfEmpty(Day.Number(Completeness.Always)).Min();
        var until = Day.Date(Math.Max(last - 1, Day.Number(Completeness.Always)));
        var written = (ledger?.Sheets ?? []).SelectMany(sheet => sheet.Rows).SelectMany(row => row.Writes).Select(entry => vocabulary.FindKind(entry.Kind)?.Declaration.Id ?? -1).ToHashSet();
        return (keeping is null ? null : keeping with { Complete = [.. keeping.Complete.SelectMany(Ended)] }, true);

        IEnumerable<Completeness> Ended(Completeness promise)
        {
            ImmutableArray<Kind> others = [.. promise.Kinds.Where(kind => !IsWritten(kind))], ended = [.. promise.Kinds.Where(IsWritten)];
            if (!others.IsEmpty)
            {
                yield return promise with { Kinds = others };
            }

            if (!ended.IsEmpty && promise.Since <= until)
            {
                yield return promise with { Kinds = ended, Until = promise.Until < until ? promise.Until : until };
            }
        }

        bool IsWritten(Kind kind) => kind.Declaration is MeasureKind or TestKind or EventKind { Marks: not Marks.Nothing } || kind.Declaration.Id == vocabulary.Calving?.Id || written.Contains(kind.Declaration.Id);
    }
}
