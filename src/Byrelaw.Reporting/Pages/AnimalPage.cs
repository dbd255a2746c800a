namespace Byrelaw.Reporting.Pages;

/// <summary>One animal, at every session and by both checks: one sentence, one job, her year, what matters, and all the rest folded beneath.</summary>
public static class AnimalPage
{
    /// <summary>The page.</summary>
    /// <param name="her">What every list says of her.</param>
    /// <param name="path">Where it lies in the report, without an ending.</param>
    /// <param name="rowOf">Where her row stands on a list's page, relative to this one.</param>
    /// <param name="previous">The number and page of the one before her, if any.</param>
    /// <param name="next">The number and page of the one after her, if any.</param>
    public static Page Of(HerReports her, string path, Func<AnimalReport, string> rowOf, (string Number, string Link)? previous = null, (string Number, string Link)? next = null)
    {
        ArgumentNullException.ThrowIfNull(her);
        var rules = HerRules.Of(her);
        return new(path, $"{her.Main.Animal.Number} · {Headline.Of(her.Main)}", Head(her),
        [
            Top(her),
            new DocumentBuilder().Draw(HerSessions.Of(her)).As("sessions"),
            Doubted(her.Main),
            Year(her),
            Rules(rules),
            Points(her.Main),
            Why(her, rules),
            new DocumentBuilder().Draw(new Blanks("Found on the day", "Not used: decided by, and why")).As("blanks"),
            new DocumentBuilder().Fold(Wording.Bold("Cautions"), new DocumentBuilder().Bullets(SafetyNotes.General), onScreenOnly: false).As("cautions"),
            Way(her, rowOf, previous, next),
        ]);
    }

    /// <summary>Judged for every session; void after the one that the sentence at the top speaks of.</summary>
    private static PageHead Head(HerReports her)
    {
        var head = her.Main.On.Head;
        var last = her.Main.On.List.Choice.JudgedTo;
        var sessions = her.All.Select(report => report.On.List.Session).Distinct().Count();
        return sessions < 2 ? head with { HoldsTo = last }
            : head with
            {
                Facts = [new("judged for", $"{sessions} sessions, from {Dates.Long(her.All.Min(report => report.On.List.Choice.JudgedFrom))}"), .. head.Facts.Where(fact => fact.Name is not ("judged for" or "void after")), new("void after", Dates.Long(last))],
                HoldsTo = last,
            };
    }

    private static Part Top(HerReports her)
    {
        var report = her.Main;
        var who = string.Join(" · ", new[] { Particulars.Sort(report), Particulars.Mob(report) is { Length: > 0 } mob ? $"mob {mob}" : "", Particulars.Tag(report) }.Where(text => text.Length > 0));
        var part = new DocumentBuilder().Draw(new AnimalHeading(report.Animal.Number, $"{Wording.Answer(report.Animal.Answer, report.On.Use)} {Wording.Danger(her.InCalf)}", who))
            .Sentence(Phrases.Stop(Headline.Of(report)), Tone.Lead)
            .Framed(Frame.Job, ToDo.Of(report))
            .Sentence(PlannedWords.Of(report))
            .Sentence(string.Join(" · ", Story.Of(report, sinceCalved: true)), Tone.Soft);
        if (report.On.Draft.KnownOn is { } day)
        {
            part.Sentence(ListPage.AsKnownOn(day));
        }

        var beware = Cautions.Of(report).Where(caution => caution != Phrases.Small(InCalfWords.Of(report.Animal.InCalf))).ToList();
        if (beware.Count > 0)
        {
            part.Led("Beware:", Phrases.Stop(string.Join("; ", beware)));
        }

        if (her.All.Any(one => one.On.IsForTreatment && one.Animal.Answer.MayBeUsed()))
        {
            part.Sentence(SafetyNotes.Prostaglandin);
        }

        return part.Sentence(WhyNot.Of(report, withClauses: false)).Led("The smallest change:", SmallestChange.Of(report)).As("top");
    }

    private static Part Doubted(AnimalReport report) => DoubtsAboutHer.Of(report) is { Count: > 0 } doubts
        ? new DocumentBuilder().Led("Doubted about her records:", string.Join(" ", doubts)).As("doubted")
        : Part.None;

    private static Part Year(HerReports her) => HerYear.Of(her) is { } year ? new DocumentBuilder().Heading(2, "Her year").Draw(year).As("year") : Part.None;

    private static Part Rules(ImmutableArray<(RuleJudgement Rule, AnimalReport Report)> rules)
    {
        var (matter, rest) = (rules.Where(one => HerRules.Matters(one.Rule)).ToList(), rules.Where(one => !HerRules.Matters(one.Rule)).ToList());
        var hold = rest.Count(one => one.Rule.Answer == RuleAnswer.Met);
        var others = rest.Where(one => one.Rule.Answer == RuleAnswer.DoesNotApply).Select(one => one.Rule.Name).Distinct().ToList();
        var part = new DocumentBuilder().Heading(2, "What matters");
        return (matter.Count == 0 ? part.Sentence("Nothing: every rule holds, and none of them only just.") : part.Table(HerRules.Table("What is against her, not known, waived, let pass, changed here, or for the day", matter, says: true)))
            .Fold(Wording.Bold(Numbers.Count(hold, "more rule holds", "more rules hold")), new DocumentBuilder()
                .Table(HerRules.Table("Rules that hold", rest.Where(one => one.Rule.Answer == RuleAnswer.Met), says: false))
                .Sentence(others.Count == 0 ? "" : $"Not for her: {Phrases.And(others)}."))
            .As("matters");
    }

    private static Part Points(AnimalReport report)
    {
        if (report.Animal.Prefers.IsEmpty)
        {
            return Part.None;
        }

        var table = new Table("Points rank those who may be used; they keep nobody out", "answer", "what is preferred", "points", "found", "records");
        foreach (var prefer in report.Animal.Prefers)
        {
            table.Add(
                prefer.Truth switch { Truth.True => "✓ yes", Truth.False => "✗ no", _ => "? not known" },
                $"{prefer.Prefer.Name}: {ConditionWords.Of(prefer.Prefer.Condition)}",
                Numbers.Of(prefer.Truth == Truth.True ? prefer.Prefer.Counts : 0),
                string.Join("; ", prefer.Findings.Select(finding => FoundWords.Of(finding, report.On))),
                EvidenceWords.Of(prefer.Findings.SelectMany(finding => finding.Evidence), report.On));
        }

        var rank = report.Animal.Rank is { } place ? $", rank {place}" : "";
        return new DocumentBuilder().Fold(Wording.Bold($"Points: {Numbers.Of(report.Animal.Score)}{rank}"), new DocumentBuilder().Table(table), onScreenOnly: true).As("points");
    }

    /// <summary>Of the rules that matter why they are there, and of waivers who agreed.</summary>
    private static Part Why(HerReports her, ImmutableArray<(RuleJudgement Rule, AnimalReport Report)> rules)
    {
        var matter = rules.Where(one => one.Rule.Rule is not null && HerRules.Matters(one.Rule)).DistinctBy(one => one.Rule.Name)
            .Select<(RuleJudgement Rule, AnimalReport Report), Wording>(one => $"{WhyRule.InShort(one.Rule.Rule!)} {Wording.Link("In full.", $"../{RulesPage.Path}.md#{RulesPage.AnchorOf(one.Report.On.Name, one.Rule.Rule!)}")}");
        var waivers = her.Main.Animal.Rules.Select(rule => rule.Waiver).OfType<Waiver>().Select<Waiver, Wording>(waiver =>
            $"{Wording.Bold($"{waiver.Rule}, waived for her.")} Until {Dates.Long(waiver.Until)}. {waiver.Because} {LocalPractice.Agreed(waiver.Agreement)}");
        return matter.Concat(waivers).ToList() is { Count: > 0 } why ? new DocumentBuilder().Heading(2, "Why, and where it comes from").Bullets(why).As("why") : Part.None;
    }

    private static Part Way(HerReports her, Func<AnimalReport, string> rowOf, (string Number, string Link)? previous, (string Number, string Link)? next)
    {
        var links = new List<Wording>();
        if (previous is { } before)
        {
            links.Add(Wording.Link($"← {before.Number}", before.Link));
        }

        links.AddRange(her.All.Select(report => Wording.Link(report.On.Title, rowOf(report))));
        if (next is { } after)
        {
            links.Add(Wording.Link($"{after.Number} →", after.Link));
        }

        return new DocumentBuilder().Sentence(Wording.Join(" · ", links)).As("screen");
    }
}
