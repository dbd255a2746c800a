using Byrelaw.Language.Reasoning;

namespace Byrelaw.Language.Layers;

/// <summary>
/// What can be told of safety rules only when all words are bound: whether a change is proved stricter, whether one asks no more than was asked,
/// whether what is lost meets one, and whether any animal can fail it. What is not known because nothing was found is met by none of them.
/// </summary>
internal sealed class SafetyRules
{
    private static readonly TimeLength AMonth = new(1, TimeUnit.Months);
    private readonly Rulebook _rulebook;
    private readonly Dictionary<SourceFile, RuleFile> _files;
    private readonly FormulaMaker _maker;
    private readonly Search _search;

    // `age at least 1 day` bars nobody whom a list is about: a demand that only a calf at foot could fail asks for nothing.
    private readonly Formula _isWeaned;

    private SafetyRules(Rulebook rulebook, IEnumerable<RuleFile> files)
    {
        (_rulebook, _files) = (rulebook, files.ToDictionary(file => file.Source));
        _maker = new FormulaMaker(rulebook, isShared: true, isSure: true);
        _search = new Search(_maker.Quantities, isShared: true);
        _isWeaned = _maker.Make(new AgeCondition(new TimeTest(Comparison.AtLeast, AMonth, AMonth)) { Span = new SourceSpan(new SourceFile("", ""), 0, 0) });
    }

    /// <summary>The rulebook with what was proved of its safety rules; those that could let an animal through by what they say are broken.</summary>
    public static Rulebook Held(Rulebook rulebook, IEnumerable<RuleFile> files)
    {
        if (!rulebook.Rules.Any(rule => rule is { IsSafety: true, IsBroken: false }))
        {
            return rulebook;
        }

        var safety = new SafetyRules(rulebook, files);
        return rulebook with { Rules = [.. rulebook.Rules.Select(rule => rule is { IsSafety: true, IsBroken: false } ? safety.Held(rule) : rule)] };
    }

    private Rule Held(Rule rule)
    {
        var applies = RuleFormulas.Of(rule, _maker).Applies;
        var isLost = LostRecords.ThatMeet(rule, _rulebook) is { } lost && Tell(rule.Needs.Span, SafetyProblems.MetByWhatIsLost(rule.Needs.Span, rule.Name, lost.Name));
        var held = Versions(rule, applies, isTold: isLost);
        var first = First(rule);
        var neverFails = !_search.CanBe((applies, true), (_maker.Make(first.Needs), false)) && Tell(first.Needs.Span, SafetyProblems.NeverFails(first.Needs.Span, rule.Name));
        return isLost || neverFails ? held with { IsBroken = true } : held;
    }

    /// <summary>Every version with what was proved of its change, the first one first.</summary>
    /// <param name="rule">The newest.</param>
    /// <param name="applies">To whom it applies.</param>
    /// <param name="isTold">Whether worse is told of its text already.</param>
    private Rule Versions(Rule rule, Formula applies, bool isTold)
    {
        if (rule.Before is not { } before)
        {
            return rule;
        }

        var held = Versions(before, applies, isTold: false);
        rule = rule with { Before = held, IsBroken = rule.IsBroken || held.IsBroken };
        if (rule.Besides is not { } besides || ReferenceEquals(besides, before.Besides))
        {
            return rule with { Besides = held.Besides };
        }

        // Where it holds all that was asked, word for word, it is asked alone; all else is for the search to prove.
        var (asked, here) = (_maker.Make(besides.Before), _maker.Make(besides.Here));
        var isStricter = ReferenceEquals(besides.Here, rule.Needs) || !_search.CanBe((applies, true), (here, true), (asked, false));
        rule = rule with { Besides = besides with { IsStricter = isStricter, Shown = isStricter ? besides.Here : AskedBesides.Together(held.Shown, besides.Here) } };
        if (isStricter)
        {
            return rule;
        }

        var was = ConditionText.Spoken.Of(held.Shown);
        var isLooser = !_search.CanBe((applies, true), (_isWeaned, true), (asked, true), (here, false));
        if (!isTold)
        {
            Tell(besides.Here.Span, isLooser
                ? SafetyProblems.AsksLess(besides.Here.Span, rule.Name, was, held.Span)
                : SafetyProblems.AsksBesides(besides.Here.Span, rule.Name, was, held.Span));
        }

        return isLooser ? rule with { IsBroken = true } : rule;
    }

    private static Rule First(Rule rule)
    {
        while (rule.Before is { } before)
        {
            rule = before;
        }

        return rule;
    }

    private bool Tell(SourceSpan at, Diagnostic problem)
    {
        if (at.File is not null && _files.TryGetValue(at.File, out var file))
        {
            file.Problems.Add(problem);
        }

        return true;
    }
}
