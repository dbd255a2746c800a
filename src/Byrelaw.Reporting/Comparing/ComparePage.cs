namespace Byrelaw.Reporting.Comparing;

/// <summary>Two rulebooks compared, on one page.</summary>
public static class ComparePage
{
    /// <summary>The page, named <c>compare</c>.</summary>
    public static Page Of(ComparisonReport report)
    {
        var title = $"From {report.OldFile} to {report.NewFile}";
        var standing = report.Herd is { } herd ? ReachWords.Of(herd.New.Herd) : "rules only, no records";
        return new Page("compare", title, standing,
        [
            new MarkdownPart().Heading(1, title).Words(CompareSummary.Of(report)).As("top"),
            .. report.Sections.Select(section => new MarkdownPart().Heading(2, section.Heading).BulletsOf(section.Differences.Select(difference =>
                $"{MarkdownText.Bold(DifferenceWords.Lead(difference) + ".")} {MarkdownText.After(DifferenceWords.Rest(difference))}".TrimEnd())).As("differences")),
            .. report.Herd is { } judged ? Animals(judged) : [],
            .. MadeUp(report),
            new MarkdownPart().Heading(2, "Fingerprints").Bullets(
            [
                $"Compared with: {JudgedWith.NameAndVersion}",
                $"{report.OldFile}: {Fingerprint.Of(report.Rules.Old)}",
                $"{report.NewFile}: {Fingerprint.Of(report.Rules.New)}",
                .. report.Herd is { } records ? new[] { $"Records: {records.New.Herd.Fingerprint}" } : [],
            ]).As("fingerprints"),
        ]);
    }

    private static IEnumerable<Part> Animals(HerdComparison herd)
    {
        yield return new MarkdownPart().Heading(2, "What it changes for the animals").Table(Counts(herd))
            .Words(herd.Groups.IsEmpty ? "Nothing: every animal has the same answer, with the same dates and for the same reasons." : CompareSummary.Caution).As("counts");
        foreach (var group in herd.Groups)
        {
            var table = new MarkdownTable(Numbers.Count(group.Animals.Length, "animal", "animals"), "list", "number", "was", "because", "is", "because");
            foreach (var animal in group.Animals)
            {
                var (was, now) = (AnimalWords.Old(animal, herd), AnimalWords.New(animal, herd));
                table.Add(MarkdownText.Of(animal.List), MarkdownText.Bold(animal.Number), was.Answer, MarkdownText.Of(was.Reason), now.Answer, MarkdownText.Of(now.Reason));
            }

            yield return new MarkdownPart().Heading(3, $"Because of {CauseWords.Title(group.Cause)}")
                .Words(CauseWords.HowTogether(group.Cause)).Table(table).As("animals");
        }
    }

    private static IEnumerable<Part> MadeUp(ComparisonReport report)
    {
        if (!report.MadeUp.IsEmpty)
        {
            var part = new MarkdownPart().Heading(2, MadeUpWords.Heading(report.MadeUp[0].Day));
            foreach (var rule in report.MadeUp.GroupBy(animal => animal.Rule))
            {
                part.Heading(3, rule.Key).Bullets(rule.Select(MadeUpWords.Of));
            }

            yield return part.As("animals");
        }
    }

    private static MarkdownTable Counts(HerdComparison herd)
    {
        var table = new MarkdownTable("How many have which answer, before and now", ["list", .. AnswerWords.All.Select(AnswerWords.Both)]);
        foreach (var list in CompareSummary.Lists(herd))
        {
            table.Add([MarkdownText.Of(list), .. AnswerWords.All.Select(answer =>
                CompareSummary.Counts(herd, list, answer) is var (was, now) && was == now ? $"{now}" : $"{was} → {now}")]);
        }

        return table;
    }
}
