namespace Byrelaw.Reporting.Terminal;

/// <summary>What is in the records, for a terminal.</summary>
public static class RecordsText
{
    /// <summary>Animals, kinds and days, with line ends LF.</summary>
    public static string Of(Herd herd, Ink ink)
    {
        var females = herd.Sexes.Count(sex => sex == Sex.Female);
        var males = herd.Sexes.Count(sex => sex is Sex.Male or Sex.Steer);
        var open = herd.Count - females - males;
        var present = Enumerable.Range(0, herd.Count).Count(animal => herd.Membership.At(animal, herd.Coverage.KnownDay) == Presence.In);
        var text = new DocumentBuilder().Sentence($"{Wording.Bold(Numbers.Count(herd.Count, "animal", "animals"))}: {Numbers.Count(females, "female", "females")}, {Numbers.Count(males, "male", "males")}"
            + $"{(open > 0 ? $", {open} whose sex is not on record" : "")}; {(herd.ReachesADay ? $"{present} in the herd on {Dates.Long(herd.KnownDay)}, the day the records reach" : ReachWords.Of(herd))}").Gap();
        var rows = herd.Vocabulary.Kinds.Select(kind => Row(herd, kind)).Where(row => row.Count > 0).ToList();
        if (rows.Count == 0)
        {
            return Doubted(text.Sentence("No events."), herd).OnTerminal(ink);
        }

        var table = new Table("Events by kind", "", new Column("", IsNumber: true, Least: 7), "");
        foreach (var row in rows.OrderByDescending(row => row.Count).ThenBy(row => row.Name, StringComparer.Ordinal))
        {
            table.Add(row.Name, $"{row.Count}", $"{Dates.Range(row.First, row.Last)}{row.Complete}");
        }

        return Doubted(text.In(1).Table(table), herd).OnTerminal(ink);
    }

    private static DocumentBuilder Doubted(DocumentBuilder text, Herd herd)
    {
        text.Gap().In(0);
        string[] embryos = [.. EmbryoWords.All(herd)];
        foreach (var sentence in embryos)
        {
            text.Sentence(sentence);
        }

        if (embryos.Length > 0)
        {
            text.Gap();
        }

        if (herd.Doubted.IsEmpty)
        {
            return text.Sentence(DoubtWords.Nothing(herd));
        }

        text.Heading(2, "What is doubted").In(1).Numbered(DoubtWords.Of(herd).Select(said => said.Whole()));
        return DoubtWords.Lines(herd) is { Length: > 0 } lines ? text.Gap().In(0).Sentence(lines) : text;
    }

    private static (string Name, int Count, LocalDate First, LocalDate Last, string Complete) Row(Herd herd, Kind kind)
    {
        var mob = herd.MobRuns[kind.Id]?.Days ?? [];
        int[] days = [.. herd.Runs[kind.Id].Days, .. mob];
        var since = herd.Coverage.Since[kind.Id];
        var complete = herd.Coverage.IsSinceHerLast(kind.Id) ? ", complete of each animal since the last one"
            : since == Day.End ? kind is EventKind { IsMobMove: false } ? ", not said to be complete" : "" : $", complete since {Dates.Long(Day.Date(since))}";
        return days.Length == 0 ? (kind.Name, 0, default, default, "")
            : (kind.Name, days.Length, Day.Date(days.Min()), Day.Date(days.Max()), complete);
    }
}
