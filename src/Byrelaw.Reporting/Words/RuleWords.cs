namespace Byrelaw.Reporting.Words;

/// <summary>One rule's answer in words, a method for each column of the audit.</summary>
public static class RuleWords
{
    private const int MostWays = 3;

    /// <summary>What was found: <c>43 of 56 days</c>; <c>pregnant 10 Nov, as known on 20 Nov</c> where no judging day shows it.</summary>
    public static string Found(RuleJudgement rule, ListReport list) => FoundThen(rule, list) + AsKnown(rule, list);

    /// <summary>What was found, on whichever day shows it.</summary>
    public static string FoundThen(RuleJudgement rule, ListReport list)
    {
        switch (rule)
        {
            case { Answer: RuleAnswer.Broken }:
                return "the rule cannot be read";
            case { Answer: RuleAnswer.DoesNotApply }:
                return rule.Rule is { } other && Audience(other) is { Length: > 0 } audience ? $"only {audience}" : "does not apply";
            case { Gate: not Gate.None }:
                return Gates(rule);
            case { Replaced: IfNotKnown.Pass } when Said(rule).All(finding => finding.Evidence.IsEmpty):
                return "nothing on record";
            default:
                var said = Said(rule);
                return said.Count == 1
                    ? FoundWords.Of(said[0], list)
                    : string.Join("; ", Once(said).Select(finding => ToldWords.Of(finding, list)).Distinct());
        }
    }

    /// <summary>One result that several conditions look at is told once.</summary>
    private static IEnumerable<Finding> Once(IReadOnlyList<Finding> said) => said.DistinctBy(finding => (finding.Condition, finding.Evidence.LastOrDefault(evidence => evidence.Kind is TestKind)) switch
    {
        (TestCondition { Test: var test }, { Line: var line }) => (test.Declaration.Name, line, ""),
        (CountCondition { Counted: [{ Kind: TestKind test }, ..] }, { Line: var line }) => (test.Declaration.Name, line, ""),
        var (condition, _) => ("", 0, ConditionWords.Of(condition)),
    });

    /// <summary>What was found, so that it stands without the rule's words beside it; the most telling finding where there are several.</summary>
    public static string Told(RuleJudgement rule, ListReport list)
    {
        if (rule.Answer is RuleAnswer.Broken or RuleAnswer.DoesNotApply || rule.Gate != Gate.None || Said(rule) is not { Count: > 0 } said)
        {
            return Found(rule, list);
        }

        var telling = said.MaxBy(finding => finding.Evidence.Max(evidence => evidence.Date) ?? LocalDate.MinIsoValue)!;
        var told = said.Count == 1 && telling.Condition is TimeSinceCondition or MobMeasuredCondition
            ? FoundWords.Of(telling, list)
            : ToldWords.Of(telling, list);
        return told + AsKnown(rule, list);
    }

    /// <summary>Of what no judging day shows, the day that the records reach.</summary>
    private static string AsKnown(RuleJudgement rule, ListReport list) =>
        rule is { FoundOn: { } day, Answer: RuleAnswer.NotMet or RuleAnswer.NotKnown } ? $", as known on {list.Short(day)}" : "";

    /// <summary>What the rule asks for, in the rule file's words.</summary>
    public static string Needed(RuleJudgement rule) =>
        rule.Rule is { } written ? ConditionWords.Of(written.Shown) : Phrases.Small(rule.Name);

    /// <summary>For whom the rule is, where it is not for everyone: <c>for cows</c>.</summary>
    public static string Audience(Rule rule) => rule.Audience switch
    {
        Language.Rulebooks.Audience.Cows => "for cows",
        Language.Rulebooks.Audience.Heifers => "for heifers",
        Language.Rulebooks.Audience.Females => "for females",
        Language.Rulebooks.Audience.Named when rule.AppliesTo is { } named => $"for those of whom it holds: {ConditionWords.Of(named)}",
        _ => "",
    };

    /// <summary>When it turns or what would settle it.</summary>
    public static string Settles(RuleJudgement rule, ListReport list)
    {
        var parts = new List<string>();
        if (rule.Rule?.OnTheDay == true && rule.Answer != RuleAnswer.Broken)
        {
            return rule.Answer == RuleAnswer.DoesNotApply ? "" : "by the person beside her";
        }

        switch (rule.Answer)
        {
            case RuleAnswer.Met when rule.Waiver is { } waiver:
                parts.Add($"waived until {list.Long(waiver.Until)}");
                break;
            case RuleAnswer.Met:
                parts.Add(rule.ChangesOn is { } lapses ? $"lapses {list.Short(lapses)}" : "holds");
                break;
            case RuleAnswer.NotMet:
                parts.Add(rule.TurnsOn is { } turns ? $"turns {list.Short(turns)}" : Remedies(rule, list));
                break;
            case RuleAnswer.NotKnown:
                parts.Add(rule.Ways.IsEmpty ? MissingWords.AllOf(Missing(rule), list) : string.Join(", or ", rule.Ways.Take(MostWays).Select(way => MissingWords.AllOf(way, list, " and "))));
                break;
            case RuleAnswer.Broken:
                parts.Add("mend the rule file");
                break;
        }

        if (rule.IsShaky)
        {
            parts.Add("shaky");
        }

        if (rule is { Expected: true, Answer: RuleAnswer.Met, Waiver: null })
        {
            parts.Add("if nothing happens");
        }

        if (rule.Replaced != IfNotKnown.Ask)
        {
            parts.Add(rule.Replaced == IfNotKnown.Pass ? "not known, and let pass" : "not known, and so kept out");
        }

        return string.Join(", ", parts.Where(part => part.Length > 0));
    }

    /// <summary>The records it rests on.</summary>
    public static string Records(RuleJudgement rule, ListReport list) => EvidenceWords.Of(Evidence(rule), list);

    /// <summary>The same as they are, without doubles.</summary>
    public static IEnumerable<Evidence> Evidence(RuleJudgement rule) =>
        rule.GateEvidence.Concat(Said(rule).SelectMany(Telling)).Distinct();

    /// <summary>Of a spell, nothing from before it last began or ended: what is long over tells nothing.</summary>
    private static IEnumerable<Evidence> Telling(Finding finding)
    {
        var spells = finding.Condition is SpellCondition condition ? [condition.Spell] : finding.Condition.Windows.OfType<FromAfterSpell>().Select(window => window.Spell);
        if (spells.FirstOrDefault() is not { } spell)
        {
            return finding.Evidence;
        }

        var ended = finding.Evidence.Where(evidence => evidence.Kind == spell.Until).Max(evidence => evidence.Date);
        var began = finding.Evidence.Where(evidence => evidence.Kind == spell.From && !(evidence.Date > ended)).Max(evidence => evidence.Date);
        return finding.Evidence.Where(evidence => !((evidence.Kind == spell.Until && evidence.Date < ended) || (evidence.Kind == spell.From && evidence.Date < began)));
    }

    /// <summary>What would settle a rule that is not known, without doubles.</summary>
    public static IReadOnlyList<Missing> Missing(RuleJudgement rule) =>
        [.. Said(rule).SelectMany(finding => finding.Missing).Distinct()];

    /// <summary>The findings that speak for the rule: those that decide it, else all. Of a rule that was made stricter, those of its new text, where one decides.</summary>
    public static IReadOnlyList<Finding> Said(RuleJudgement rule)
    {
        var deciding = rule.Findings.Where(finding => finding.Decides).ToList();
        if (rule.Rule?.Besides is { IsStricter: true } besides && deciding.Where(finding => IsOf(besides.Here, finding)).ToList() is { Count: > 0 } here)
        {
            return here;
        }

        return deciding.Count > 0 ? deciding : rule.Findings;
    }

    /// <summary>Whether a finding is of a condition, or was reached through a name in it.</summary>
    private static bool IsOf(Condition condition, Finding finding) => finding.Through.IsEmpty
        ? condition.Written().Any(written => ReferenceEquals(written, finding.Condition))
        : condition.Named().Any(named => named.Define == finding.Through[0]);

    /// <summary>The judging day that decides: the first on which the rule has its answer; where none does, the day that the records reach.</summary>
    public static LocalDate DecidingDay(RuleJudgement rule, ListReport list)
    {
        if (rule.FoundOn is { } since)
        {
            return since;
        }

        var choice = list.List.Choice;
        var wanted = rule.Answer switch { RuleAnswer.NotMet => Truth.False, RuleAnswer.NotKnown => Truth.Unknown, _ => Truth.True };
        for (var day = choice.JudgedFrom; day <= choice.JudgedTo; day = day.PlusDays(1))
        {
            if (rule.Timeline.At(day).Truth == wanted)
            {
                return day;
            }
        }

        return choice.JudgedFrom;
    }

    /// <summary>What would turn a rule that is not met: of several ways those that take least; that one of several conditions is lost for good says nothing while another is not.</summary>
    public static string Remedies(RuleJudgement rule, ListReport list)
    {
        ArgumentNullException.ThrowIfNull(rule);
        var ways = rule.Remedies.Where(way => way.All(remedy => remedy.Kind != RemedyKind.ForGood)).Select(way => way.Select(remedy => RemedyWords.Of(remedy, list)).Distinct().ToList()).ToList();
        if (ways.Count > 0)
        {
            var least = ways.Min(way => way.Count);
            return string.Join(", or ", ways.Where(way => way.Count == least).Select(way => Phrases.And(way)).Distinct().Take(MostWays));
        }

        var remedies = Said(rule).Select(finding => finding.Remedy).OfType<Remedy>().ToList();
        var open = remedies.Where(remedy => remedy.Kind != RemedyKind.ForGood && !remedies.Exists(other => IsNarrower(other, remedy, list))).ToList();
        return Phrases.And([.. (open.Count > 0 ? open : remedies).Select(remedy => RemedyWords.Of(remedy, list)).Distinct()]);
    }

    /// <summary>Whether what one thing takes does for the other too: a calving for a calving or purchase, a scan for any pregnancy test.</summary>
    private static bool IsNarrower(Remedy one, Remedy other, ListReport list) => one.Kind == other.Kind && (one.Subjects.Length < other.Subjects.Length
        ? one.Subjects.All(other.Subjects.Contains)
        : one.Kind == RemedyKind.NewResult && one.Subjects is [var narrow] && other.Subjects is [var wide]
            && list.Herd.Vocabulary.Filtered.Any(kind => kind.Name == narrow && kind.Declaration.Name == wide));

    private static string Gates(RuleJudgement rule)
    {
        var no = rule.Gate == Gate.InTheHerd ? "not in the herd" : $"not {Kind(rule)}";
        return rule.Answer switch
        {
            RuleAnswer.Met => rule.Gate == Gate.InTheHerd ? "in the herd" : Kind(rule),
            RuleAnswer.NotMet => no,
            _ => rule.Gate == Gate.InTheHerd ? "not known whether she is in the herd" : $"not known whether {Kind(rule)}",
        };
    }

    private static string Kind(RuleJudgement rule) => Phrases.Small(rule.Name) switch { "cow" => "a cow", "heifer" => "a heifer", var other => other };
}
