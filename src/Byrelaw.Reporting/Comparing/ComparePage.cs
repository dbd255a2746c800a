namespace Byrelaw.Reporting.Comparing;

/// <summary>Two rulebooks compared, on one page.</summary>
public static class ComparePage
{
    /// <summary>The page, named <c>compare</c>.</summary>
    public static Page Of(ComparisonReport report)
    {
        var title = $"From {report.OldFile} to {report.NewFile}";
        return new Page("compare", title, Head(report),
        [
            new DocumentBuilder().Heading(1, title).Sentence(CompareSummary.Of(report)).As("top"),
            .. report.Sections.Select(section => new DocumentBuilder().Heading(2, section.Heading).Bullets(section.Differences.Select<Difference, Wording>(difference =>
                $"{Wording.Bold(DifferenceWords.Lead(difference) + ".")} {DifferenceWords.Rest(difference)}")).As("differences")),
            .. report.Herd is { } judged ? Animals(judged) : [],
            .. MadeUp(report),
            new DocumentBuilder().Heading(2, "Fingerprints").Bullets(
            [
                $"Compared with: {JudgedWith.NameAndVersion}",
                $"{report.OldFile}: {Fingerprint.Of(report.Rules.Old)}",
                $"{report.NewFile}: {Fingerprint.Of(report.Rules.New)}",
                .. report.Herd is { } records ? new[] { $"Records: {records.New.Herd.Fingerprint}" } : [],
            ]).As("fingerprints"),
        ]);
    }

    private static PageHead Head(ComparisonReport report) => report.Herd is { } herd
        ? new("", ReachWords.Fact(herd.New.Herd)) { Devices = DeviceWords.Of(herd.New.Herd, report.Rules.New) }
        : new("", new HeadFact("", "rules only, no records"));

    private static IEnumerable<Part> Animals(HerdComparison herd)
    {
        yield return new DocumentBuilder().Heading(2, "What it changes for the animals").Table(Counts(herd))
            .Sentence(herd.Groups.IsEmpty ? "Nothing: every animal has the same answer, with the same dates and for the same reasons." : CompareSummary.Caution).As("counts");
        foreach (var group in herd.Groups)
        {
            var table = new Table(Numbers.Count(group.Animals.Length, "animal", "animals"), "list", "number", "was", "because", "is", "because");
            foreach (var animal in group.Animals)
            {
                var (was, now) = (AnimalWords.Old(animal, herd), AnimalWords.New(animal, herd));
                table.Add(animal.List, Wording.Bold(animal.Number), was.Answer, was.Reason, now.Answer, now.Reason);
            }

            yield return new DocumentBuilder().Heading(3, $"Because of {CauseWords.Title(group.Cause)}")
                .Sentence(CauseWords.HowTogether(group.Cause)).Table(table).As("animals");
        }
    }

    private static IEnumerable<Part> MadeUp(ComparisonReport report)
    {
        if (!report.MadeUp.IsEmpty)
        {
            var part = new DocumentBuilder().Heading(2, MadeUpWords.Heading(report.MadeUp[0].Day));
            foreach (var rule in report.MadeUp.GroupBy(animal => animal.Rule))
            {
                part.Heading(3, rule.Key).Bullets(rule.Select(MadeUpWords.Of));
            }

            yield return part.As("animals");
        }
    }

    private static Table Counts(HerdComparison herd)
    {
        var table = new Table("How many have which answer, before and now", ["list", .. AnswerWords.All.Select(AnswerWords.Both)]);
        foreach (var list in CompareSummary.Lists(herd))
        {
            table.Add([list, .. AnswerWords.All.Select(answer =>
                CompareSummary.Counts(herd, list, answer) is var (was, now) && was == now ? $"{now}" : $"{was} → {now}")]);
        }

        return table;
    }
}
