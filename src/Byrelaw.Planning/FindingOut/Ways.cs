using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.FindingOut;

/// <summary>Finds what could be supposed of an animal so that her rules hold.</summary>
/// <param name="rulebook">The rules, with the programme on the session's days.</param>
/// <param name="herd">Its records.</param>
/// <param name="lists">The lists that are asked: how long a result takes is what their tasks say.</param>
/// <param name="today">The day of planning.</param>
/// <param name="by">By then everything must be in hand.</param>
/// <param name="spread">So many days lie between the first and the last day on which the rules are asked: what is missed is told for the first.</param>
internal sealed class Ways(Rulebook rulebook, Herd herd, ImmutableArray<string> lists, LocalDate today, LocalDate by, int spread)
{
    /// <summary>More ways than this are never tried for one rule.</summary>
    private const int MostWays = 24;

    /// <summary>
    /// Of a rule that is not known: each missing record by itself, on the last day that would do and on the first; then one of each kind, and every result that is awaited, together.
    /// Without any, what would do if there were time.
    /// </summary>
    /// <param name="name">The rule's name; empty for what a method asks.</param>
    /// <param name="findings">What it found.</param>
    /// <param name="animal">Of whom.</param>
    public (ImmutableArray<ImmutableArray<AskedRecord>> Open, AskedRecord? Closed) Of(string name, IEnumerable<Finding> findings, int animal)
    {
        var all = findings.Where(finding => finding.Decides).SelectMany(finding => finding.Missing.SelectMany(missing => Of(finding, missing, animal))).Select(record => record with { Rule = name }).ToList();
        var single = all.Where(record => record.IsOpen).ToList();
        var each = single.GroupBy(record => (record.Kind.Id, record.WithoutLine)).Select(thing => thing.ToList()).ToList();
        var together = each.Count < 2 ? [] : Enumerable.Range(0, each.Max(thing => thing.Count)).Select(way => each.Select(thing => thing[Math.Min(way, thing.Count - 1)]).ToImmutableArray());
        return (
            [
                .. single.Select(record => record with { Date = record.Last }).Concat(single.Select(record => record with { Date = record.First })).Distinct().Take(MostWays).Select(record => ImmutableArray.Create(record)),
                .. together.Take(MostWays),
            ],
            single.Count == 0 ? all.Find(record => !record.IsOpen) : null);
    }

    private IEnumerable<AskedRecord> Of(Finding finding, Missing missing, int animal)
    {
        if (missing.Reason == MissingReason.UnreadableRow)
        {
            return missing.Line > 0 && rulebook.Vocabulary.FindKind(missing.Subject) is { } kind ? [Mended(kind, missing, animal)] : [];
        }

        return missing.Reason is MissingReason.NoResult or MissingReason.ResultPending or MissingReason.ResultTooVague or MissingReason.NotKept or MissingReason.NeverRecorded or MissingReason.TooFewOfTheMob
            ? Favourable.Of(finding, rulebook, herd, animal)
                .Where(one => NameFolding.Fold(one.Kind.Declaration.Name) == NameFolding.Fold(missing.Subject) && (missing.Filter.Length == 0 || one.Kind.Filter?.Text == missing.Filter))
                .Select(one => With(one.Kind, one.Value, one.OfTheMob, missing, animal)).OfType<AskedRecord>()
            : [];
    }

    private AskedRecord? With(Kind kind, string value, bool ofTheMob, Missing missing, int animal)
    {
        if ((missing.Reason == MissingReason.ResultPending ? Written(kind.Declaration, missing.Line) : DetailsMeant.Of(kind)) is not { } details)
        {
            return null;
        }

        var (before, after) = LastUsefulDay.Lead(missing.Subject, lists, rulebook.Plans.Tasks);
        var isTaken = kind is MeasureKind or TestKind && missing.Reason != MissingReason.ResultPending;
        var (first, last) = missing.Reason switch
        {
            MissingReason.ResultPending => (missing.From!.Value, missing.From.Value),
            MissingReason.ResultTooVague => (today.PlusDays(before), by.PlusDays(-after)),
            _ when isTaken => (Later(missing.From, today.PlusDays(before)), Earlier(missing.To, by.PlusDays(-after))),

            // What happened may have happened before today, and not be written down.
            _ => (missing.From ?? Earlier(missing.To, today), Earlier(missing.To, by)),
        };
        return new AskedRecord
        {
            Animal = animal,
            Rule = "",
            Kind = kind.Declaration,
            Value = value,
            Unit = kind is MeasureKind { Unit: { } unit } ? unit.Symbol : "",
            Details = details,
            Of = missing.Whose.Length > 0 ? [missing.Whose] : ofTheMob && missing.Reason != MissingReason.ResultPending ? MobOf(animal, last) : [herd.Numbers[animal]],
            Whose = missing.Whose,
            WithoutLine = missing.Reason == MissingReason.ResultPending ? missing.Line : 0,
            IsTaken = isTaken || (kind is EventKind && last >= today),
            First = first,
            Last = last,
            LooksBackTo = isTaken ? missing.From?.PlusDays(spread) : null,
            Date = last,
            BegunBefore = before,
            ResultsAfter = after,
            MoreOfTheMob = missing.Needed,
        };
    }

    /// <summary>A row that is mended to what does not stand in her way: as if it were not there.</summary>
    private AskedRecord Mended(Kind kind, Missing missing, int animal) => new()
    {
        Animal = animal,
        Rule = "",
        Kind = kind.Declaration,
        Of = [herd.Numbers[animal]],
        WithoutLine = missing.Line,
        First = missing.From ?? today,
        Last = missing.To ?? today,
        Date = missing.To ?? today,
    };

    /// <summary>What a row on record says besides its result.</summary>
    private ImmutableArray<(string Name, string Value)> Written(Kind kind, int line)
    {
        var details = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (var cell in herd.Details.Of(line))
        {
            if (cell is { State: FactState.Known, Text: { } text })
            {
                details.Add((kind.Details[cell.Detail].Name, text));
            }
        }

        return details.ToImmutable();
    }

    /// <summary>Everyone in her mob on a day: as many samples as are missing, taken of them all.</summary>
    private ImmutableArray<string> MobOf(int animal, LocalDate on)
    {
        var (day, mob) = (Day.Number(on), herd.Mobs.At(animal, Day.Number(on)));
        return mob < 0 ? [herd.Numbers[animal]] : [.. Enumerable.Range(0, herd.Count).Where(other => herd.Mobs.At(other, day) == mob && herd.Membership.At(other, day) == Presence.In).Select(other => herd.Numbers[other])];
    }

    private static LocalDate Later(LocalDate? one, LocalDate other) => one is { } day && day > other ? day : other;

    private static LocalDate Earlier(LocalDate? one, LocalDate other) => one is { } day && day < other ? day : other;
}
