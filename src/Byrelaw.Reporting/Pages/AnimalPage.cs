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
        new(path, $"{report.Animal.Number} · {Headline.Of(report)}", $"{Phrases.Sentence(report.On.Name)} · {report.On.Standing}",
        [
            Top(report),
            Why(report),
            new MarkdownPart().Led("To do:", ToDo.Of(report)).As("todo"),
            new MarkdownPart().Words(string.Join(" · ", Story.Of(report))).As("story"),
            Timeline(report),
            Table(report),
            Points(report),
            new MarkdownPart().Heading(2, "Why these rules").BulletsOf(report.Animal.Rules.Where(rule => rule.Rule is not null).Select(rule => WhyRule.Of(rule, report))).As("reasons"),
            Waivers(report),
            new MarkdownPart().Quote(SafetyNotes.General[0]).As("paper"),
            Way(report, previous, next),
        ]);

    private static Part Top(AnimalReport report)
    {
        var (before, answer, after) = Headline.Sentence(report);
        var who = string.Join(" · ", new[] { Particulars.Tag(report), Mob(report), Particulars.Sort(report) }.Where(text => text.Length > 0));
        var part = new MarkdownPart()
            .HeadingOf(1, $"{MarkdownText.Bold(report.Animal.Number)} · {MarkdownText.Of($"{AnswerWords.Shape(report.Animal.Answer)} {Headline.Of(report)}")}")
            .Words(who)
            .Markdown($"{MarkdownText.Of(before)} {MarkdownText.Bold(answer)}{MarkdownText.After(after)} {Phrases.Sentence(ReachWords.Of(report.On.Herd))}.");
        if (report.On.Draft.KnownOn is { } day)
        {
            part.Words(ListPage.AsKnownOn(day));
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
        var part = new MarkdownPart();
        var inTheWay = InTheWay.Of(report);
        for (var i = 0; i < inTheWay.Count; i++)
        {
            part.Led($"{(i == 0 ? "In the way" : "Also in the way")}: {inTheWay[i].Rule}.", inTheWay[i].Sentences);
        }

        if (InTheWay.Others(report) is { Count: > 0 } others)
        {
            part.Led("In the way too:", $"{Phrases.And(others)}; see the table below.");
        }

        return part.Words(WhyNot.Of(report, withClauses: false)).Led("The smallest change:", SmallestChange.Of(report)).As("why");
    }

    private static Part Timeline(AnimalReport report) =>
        new MarkdownPart().Heading(2, "Her year ahead").Words($"All rules together: {TimelineWords.Of(report.Animal.Timeline)}.")
            .As("timeline", TimelinePicture.Of(report));

    private static Part Table(AnimalReport report)
    {
        var table = new MarkdownTable($"Every rule, for {report.On.Days}", "answer", "rule", "found", "needed", "margin", "settles", "records");
        foreach (var rule in RuleOrder.Of(report.Animal))
        {
            table.Add(
                MarkdownText.Of(RuleAnswerWords.Both(rule)),
                MarkdownText.Of(rule.Name),
                MarkdownText.Of(RuleWords.Found(rule, report.On)),
                MarkdownText.Of(RuleWords.Needed(rule)),
                MarkdownText.Of(RuleWords.Margin(rule)),
                MarkdownText.Of(RuleWords.Settles(rule, report.On)),
                MarkdownText.Of(RuleWords.Records(rule, report.On)));
        }

        return new MarkdownPart().Heading(2, "Every rule").Table(table).As("rules");
    }

    private static Part Points(AnimalReport report)
    {
        var part = new MarkdownPart();
        if (report.Animal.Prefers.IsEmpty)
        {
            return part.As("points");
        }

        var table = new MarkdownTable("Points rank those who may be used; they keep nobody out", "answer", "what is preferred", "points", "found", "records");
        foreach (var prefer in report.Animal.Prefers)
        {
            var answer = prefer.Truth switch { Truth.True => "✓ yes", Truth.False => "✗ no", _ => "? not known" };
            table.Add(
                MarkdownText.Of(answer),
                MarkdownText.Of($"{prefer.Prefer.Name}: {ConditionText.Of(prefer.Prefer.Condition)}"),
                Numbers.Of(prefer.Truth == Truth.True ? prefer.Prefer.Counts : 0),
                MarkdownText.Of(string.Join("; ", prefer.Findings.Select(finding => FoundWords.Of(finding, report.On)))),
                MarkdownText.Of(EvidenceWords.Of(prefer.Findings.SelectMany(finding => finding.Evidence), report.On)));
        }

        var rank = report.Animal.Rank is { } place ? $", rank {place}" : "";
        return part.Heading(2, $"Points: {Numbers.Of(report.Animal.Score)}{rank}").Table(table).As("points");
    }

    private static Part Waivers(AnimalReport report)
    {
        var waivers = report.Animal.Rules.Select(rule => rule.Waiver).OfType<Waiver>().Select(waiver =>
            $"{MarkdownText.Bold($"{waiver.Rule}.")} {MarkdownText.Of($"Until {Dates.Long(waiver.Until)}. {waiver.Because} {LocalPractice.Agreed(waiver.Agreement)}")}").ToList();
        return waivers.Count == 0 ? new Part("waivers", "") : new MarkdownPart().Heading(2, "Waived for her").BulletsOf(waivers).As("waivers");
    }

    private static Part Way(AnimalReport report, (string Number, string Link)? previous, (string Number, string Link)? next)
    {
        var links = new List<string>();
        if (previous is { } before)
        {
            links.Add(MarkdownText.Link($"← {MarkdownText.Of(before.Number)}", before.Link));
        }

        links.Add(MarkdownText.Link(MarkdownText.Of($"The list: {report.On.Title}"), "../index.md"));
        if (next is { } after)
        {
            links.Add(MarkdownText.Link($"{MarkdownText.Of(after.Number)} →", after.Link));
        }

        return new MarkdownPart().Markdown(string.Join(" · ", links)).As("way");
    }
}
