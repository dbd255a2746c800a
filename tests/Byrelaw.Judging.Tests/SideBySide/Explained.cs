using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Language.Rulebooks;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Holds what is written down of a rule to the reference: what was found of each condition on the day that decides, and the days on
/// which the answer changes.</summary>
/// <param name="rulebook">The rules.</param>
/// <param name="knowledge">The records, read by the reference.</param>
public sealed class Explained(Rulebook rulebook, Knowledge knowledge)
{
    /// <summary>The first thing that differs; null where nothing does.</summary>
    public string? Differs(RuleJudgement judged, JudgedRule reference, JudgedAnimal animal)
    {
        var (from, to) = animal.Judged;
        var truth = Reference.Kleene.All(reference.Days.Between(from, to).Select(day => day.Truth));
        return Days(judged, reference, truth, from, to)
            ?? (judged.Rule is { } rule && judged.Answer != RuleAnswer.Broken ? Findings(judged, rule, animal.Animal, Decisive(reference, truth, from, to)) : null);
    }

    /// <summary>What is explained is the first judging day on which the answer is the one over all of them; where none says so by itself, the day that the records reach.</summary>
    private static int Decisive(JudgedRule reference, Truth truth, int from, int to) =>
        Enumerable.Range(from, to - from + 1).FirstOrDefault(day => (reference.Alone ?? reference.Days).On(day).Truth == truth, from < reference.AlsoOn ? reference.AlsoOn.Value : from);

    private string? Findings(RuleJudgement judged, Rule rule, int animal, int day)
    {
        foreach (var finding in judged.Findings)
        {
            var truth = ConditionReference.At(finding.Condition, knowledge, new Moment(animal, day, false));
            if (finding.Truth != truth)
            {
                return $"finding of {finding.Condition.GetType().Name} {finding.Truth}, reference {truth} on {DayNumber.Date(day)}";
            }

            if (Missing(finding, new Moment(animal, day, false)) is { } missing)
            {
                return $"{finding.Condition.GetType().Name} on {DayNumber.Date(day)}, {missing}";
            }

            if (Named(finding, new Moment(animal, day, false)) is { } named)
            {
                return $"{finding.Condition.GetType().Name} on {DayNumber.Date(day)}, {named}";
            }
        }

        var asked = (rule.AppliesTo?.Leaves(rulebook) ?? []).Concat(rule.Needs.Leaves(rulebook)).ToHashSet();
        return asked.SetEquals(judged.Findings.Select(finding => finding.Condition)) ? null
            : $"findings of {judged.Findings.Length} conditions, {asked.Count} asked";
    }

    private string? Missing(Finding finding, Moment moment)
    {
        if (finding is { Condition: SpellCondition spell, Truth: Truth.Unknown })
        {
            return new MissingOfSpell(spell, finding.Missing, knowledge, moment).Wrong();
        }

        IEnumerable<Missing> reference = finding.Truth == Truth.Unknown ? new MissingReference(knowledge).Of(finding.Condition, moment) : [];
        var spells = SpellsOf(finding.Condition);

        // Where both ends of a window hang on her last of something, what is missing is that day; a result would not settle it.
        var isEnded = finding.Condition.Windows.Any(window => window is BeforeDay { Day.Date: null } or DaysAfter { Day.Date: null });
        return Differ("missing", finding.Missing.Where(one => !IsOfSpell(one, spells) && !(isEnded && one.Reason == MissingReason.NoResult)).Select(one => Dated(one, moment.Animal)), reference.Where(one => !IsOfSpell(one, spells) && !(isEnded && one.Reason == MissingReason.NoResult)).Select(one => Dated(one, moment.Animal)));
    }

    /// <summary>The records that it names, what was found in them, and how far that is from the limit.</summary>
    private string? Named(Finding finding, Moment moment)
    {
        var found = new FoundReference(knowledge, moment).Of(finding.Condition);
        var margin = MarginReference.Of(finding.Condition, found, knowledge.Farm.Animals[moment.Animal]);
        return Differ("evidence", finding.Evidence.Where(evidence => !IsOfOthers(evidence, finding.Condition)).Select(evidence => evidence with { File = "" }), new EvidenceReference(knowledge, moment).Of(finding.Condition).Where(evidence => !IsOfOthers(evidence, finding.Condition)))
            ?? (IsSame(finding.Found, found) ? null : $"found {finding.Found}, reference {found}")
            ?? ((margin is { } theirs ? finding.Margin is { } ours && IsNear(ours, (double)theirs) : finding.Margin is null) ? null : $"margin {finding.Margin}, reference {margin}");
    }

    /// <summary>The spells that windows run from: what is missing of them, and their rows, is not compared.</summary>
    private static List<Spell> SpellsOf(Condition condition) => [.. condition.Windows.OfType<FromAfterSpell>().Select(window => window.Spell)];

    private bool IsOfSpell(Missing missing, List<Spell> spells) => spells.Count > 0
        && (missing.Reason is MissingReason.MobNotKnown or MissingReason.BullsMobNotKnown or MissingReason.MayBeABull || missing.Subject is "born"
            || missing.Subject == knowledge.Rulebook.Vocabulary.MobMove.Name || spells.Exists(spell => missing.Subject == spell.From.Name || missing.Subject == spell.Until.Name));

    /// <summary>Rows of her mob or the herd that may be hers, and what makes the company of her mob: told beside what is hers, and not compared.</summary>
    private bool IsOfOthers(Evidence evidence, Condition condition) => evidence.Fact is null
        ? knowledge.Farm.GroupResults.Any(row => row.Result.Line == evidence.Line)
            || SpellsOf(condition).Exists(after => evidence.Kind is EventKind { IsMobMove: true } || evidence.Kind == after.From || evidence.Kind == after.Until)
            || (condition is SpellCondition spell && (evidence.Kind is EventKind { IsMobMove: true }
                || (evidence.Kind == spell.Spell.From && knowledge.Farm.GroupEvents.Any(row => row.Line == evidence.Line))))
        : condition is SpellCondition || SpellsOf(condition).Count > 0;

    private static bool IsSame(Found ours, Found theirs) => (ours, theirs) switch
    {
        (FoundNumber a, FoundNumber b) => IsNear(a.Low, b.Low) && IsNear(a.High, b.High) && a with { Low = 0, High = 0 } == b with { Low = 0, High = 0 },
        (FoundAnswers a, FoundAnswers b) => a.Date == b.Date && a.Answers.SequenceEqual(b.Answers),
        _ => ours == theirs,
    };

    /// <summary>A double is as near to a decimal as it can be.</summary>
    private static bool IsNear(double ours, double theirs) => ours == theirs || Math.Abs(ours - theirs) < 1e-9;

    /// <summary>A first day before everything on record, or up to her birth, is no limit; and a window that holds no day has no days. Of two rows of sheets that ask the same of her on the same days either may be named.</summary>
    private Missing Dated(Missing missing, int animal)
    {
        missing = missing.Line is < 0 and > int.MinValue / 2 ? missing with { Line = -1 } : missing;
        var earliest = Math.Max(knowledge.Coverage.Dawn, knowledge.Farm.Animals[animal].BornFirst ?? int.MinValue);
        var from = missing.From is { } day && (DayNumber.Of(day) > earliest || missing.From == missing.To) ? missing.From : null;
        return missing.From > missing.To || (missing.To is { } to && DayNumber.Of(to) <= knowledge.Coverage.Dawn) ? missing with { From = null, To = null } : missing with { From = from };
    }

    private static string? Differ<T>(string what, IEnumerable<T> judged, IEnumerable<T> reference)
    {
        var (ours, theirs) = (judged.ToHashSet(), reference.ToHashSet());
        return ours.SetEquals(theirs) ? null
            : $"{what}: only judged {string.Join(", ", ours.Except(theirs))}; only reference {string.Join(", ", theirs.Except(ours))}";
    }

    private static string? Days(RuleJudgement judged, JudgedRule reference, Truth truth, int from, int to)
    {
        if (judged.Answer == RuleAnswer.Broken)
        {
            return null;
        }

        var changes = First(from, reference.Days.Last, day => reference.Days.On(day).Truth != truth);
        if (Date(judged.ChangesOn) != changes)
        {
            return $"changes on {judged.ChangesOn}, reference {Said(changes)}";
        }

        var turns = truth != Truth.False ? null : Stretches.Later(from, to, reference.Days.Last)
            .Where(stretch => reference.Days.Between(stretch.From, stretch.To).All(one => one.Truth == Truth.True)).Select(stretch => (int?)stretch.From).FirstOrDefault();
        if (Date(judged.TurnsOn) != turns)
        {
            return $"turns on {judged.TurnsOn}, reference {Said(turns)}";
        }

        if (judged.ForGood && (truth != Truth.False || turns is not null))
        {
            return "for good, though it may turn";
        }

        var lapses = First(from, Math.Min(to + Shaky.Days, reference.Days.Last), day => reference.Days.On(day).Truth != Truth.True) is not null;
        return judged is { Rule: not null, Answer: RuleAnswer.Met, Waiver: null } && judged.IsShaky != (lapses || IsAtALimit(judged))
            ? $"shaky {judged.IsShaky}, reference {lapses}" : null;
    }

    private static bool IsAtALimit(RuleJudgement judged) => judged.Findings.Any(finding =>
        finding is { Decides: true, Inverted: false, Margin: 0 } && finding.Condition is { Demand: TimeTest } or MeasuredCondition or MobMeasuredCondition);

    private static int? First(int from, int to, Func<int, bool> holds)
    {
        for (var day = from; day <= to; day++)
        {
            if (holds(day))
            {
                return day;
            }
        }

        return null;
    }

    private static int? Date(LocalDate? date) => date is { } day ? DayNumber.Of(day) : null;

    private static string Said(int? day) => day is { } known ? DayNumber.Date(known).ToString() : "never";
}
