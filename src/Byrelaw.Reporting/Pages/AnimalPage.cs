namespace Byrelaw.Reporting.Pages;

/// <summary>One animal on one list: the answer, why, what to do, and the whole table behind it.</summary>
public static class AnimalPage
{
    /// <summary>The page.</summary>
    /// <param name="report">The animal.</param>
    /// <param name="path">Where it lies in the report, without an ending.</param>
    /// <param name="previous">The number and page of the one before her on the list, if any.</param>
    /// <param name="next">The number and page of the one after her, if any.</param>
    public static Page Of(AnimalReport report, string path, (string Number, string Link)? previous = null, (string Number, string Link)? next = null) =>
        new(path, $"{report.Animal.Number} · {Headline.Of(report)}", report.On.Head,
        [
            Top(report),
            Why(report),
            Doubted(report),
            new DocumentBuilder().Led("To do:", ToDo.Of(report)).As("todo"),
            new DocumentBuilder().Sentence(string.Join(" · ", Story.Of(report))).As("story"),
            Timeline(report),
            Table(report),
            Points(report),
            new DocumentBuilder().Heading(2, "Why these rules").Bullets(report.Animal.Rules.Where(rule => rule.Rule is not null).Select(rule => WhyRule.Of(rule, report))).As("reasons"),
            Waivers(report),
            Way(report, previous, next),
        ]);

    private static Part Top(AnimalReport report)
    {
        var (before, answer, after) = Headline.Sentence(report);
        var who = string.Join(" · ", new[] { Particulars.Tag(report), Mob(report), Particulars.Sort(report) }.Where(text => text.Length > 0));
        var part = new DocumentBuilder()
            .Heading(1, $"{Wording.Bold(report.Animal.Number)} · {AnswerWords.Shape(report.Animal.Answer)} {Headline.Of(report)}")
            .Sentence(who)
            .Sentence($"{before} {Wording.Bold(answer)}{after} {Phrases.Sentence(ReachWords.Of(report.On.Herd))}.")
            .Sentence(PlannedWords.Of(report));
        if (report.On.Draft.KnownOn is { } day)
        {
            part.Sentence(ListPage.AsKnownOn(day));
        }

        if (DraftList.Beware(report) is { Length: > 0 } beware)
        {
            part.Led("Beware:", Phrases.Stop(beware));
        }

        return part.As("top");
    }

    private static string Mob(AnimalReport report) => Particulars.Mob(report) is { Length: > 0 } mob ? $"mob {mob}" : "";

    private static Part Why(AnimalReport report)
    {
        var part = new DocumentBuilder();
        var inTheWay = InTheWay.Of(report);
        for (var i = 0; i < inTheWay.Count; i++)
        {
            part.Led($"{(i == 0 ? "In the way" : "Also in the way")}: {inTheWay[i].Rule}.", inTheWay[i].Sentences);
        }

        if (InTheWay.Others(report) is { Count: > 0 } others)
        {
            part.Led("In the way too:", $"{Phrases.And(others)}; see the table below.");
        }

        return part.Sentence(WhyNot.Of(report, withClauses: false)).Led("The smallest change:", SmallestChange.Of(report)).As("why");
    }

    private static Part Doubted(AnimalReport report) => DoubtsAboutHer.Of(report) is { Count: > 0 } doubts
        ? new DocumentBuilder().Led("Doubted about her records:", string.Join(" ", doubts)).As("doubted")
        : Part.None;

    private static Part Timeline(AnimalReport report) =>
        new DocumentBuilder().Heading(2, "Her year ahead").Sentence($"All rules together: {TimelineWords.Of(report.Animal.Timeline)}.")
            .Picture(TimelinePicture.Of(report)).As("timeline");

    private static Part Table(AnimalReport report)
    {
        var table = new Table($"Every rule, for {report.On.Days}", "answer", "rule", "found", "needed", "margin", "settles", "records");
        foreach (var rule in RuleOrder.Of(report.Animal))
        {
            table.Add(
                RuleAnswerWords.Both(rule),
                rule.Name,
                RuleWords.Found(rule, report.On),
                RuleWords.Needed(rule),
                RuleWords.Margin(rule),
                RuleWords.Settles(rule, report.On),
                RuleWords.Records(rule, report.On));
        }

        return new DocumentBuilder().Heading(2, "Every rule").Table(table).As("rules");
    }

    private static Part Points(AnimalReport report)
    {
        var part = new DocumentBuilder();
        if (report.Animal.Prefers.IsEmpty)
        {
            return part.As("points");
        }

        var table = new Table("Points rank those who may be used; they keep nobody out", "answer", "what is preferred", "points", "found", "records");
        foreach (var prefer in report.Animal.Prefers)
        {
            var answer = prefer.Truth switch { Truth.True => "✓ yes", Truth.False => "✗ no", _ => "? not known" };
            table.Add(
                answer,
                $"{prefer.Prefer.Name}: {ConditionWords.Of(prefer.Prefer.Condition)}",
                Numbers.Of(prefer.Truth == Truth.True ? prefer.Prefer.Counts : 0),
                string.Join("; ", prefer.Findings.Select(finding => FoundWords.Of(finding, report.On))),
                EvidenceWords.Of(prefer.Findings.SelectMany(finding => finding.Evidence), report.On));
        }

        var rank = report.Animal.Rank is { } place ? $", rank {place}" : "";
        return part.Heading(2, $"Points: {Numbers.Of(report.Animal.Score)}{rank}").Table(table).As("points");
    }

    private static Part Waivers(AnimalReport report)
    {
        var waivers = report.Animal.Rules.Select(rule => rule.Waiver).OfType<Waiver>().Select<Waiver, Wording>(waiver =>
            $"{Wording.Bold($"{waiver.Rule}.")} Until {Dates.Long(waiver.Until)}. {waiver.Because} {LocalPractice.Agreed(waiver.Agreement)}").ToList();
        return waivers.Count == 0 ? Part.None : new DocumentBuilder().Heading(2, "Waived for her").Bullets(waivers).As("waivers");
    }

    private static Part Way(AnimalReport report, (string Number, string Link)? previous, (string Number, string Link)? next)
    {
        var links = new List<Wording>();
        if (previous is { } before)
        {
            links.Add(Wording.Link($"← {before.Number}", before.Link));
        }

        links.Add(Wording.Link($"The list: {report.On.Title}", "../index.md"));
        if (next is { } after)
        {
            links.Add(Wording.Link($"{after.Number} →", after.Link));
        }

        return new DocumentBuilder().Sentence(Wording.Join(" · ", links)).As("way");
    }
}
