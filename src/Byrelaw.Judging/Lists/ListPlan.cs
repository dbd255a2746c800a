using Byrelaw.Language.Floors;

namespace Byrelaw.Judging.Lists;

/// <summary>One list's gates and rules, ready to be asked. For one thread.</summary>
internal sealed class ListPlan
{
    public ListPlan(HerdDays days, Rulebook rulebook, Choice choice, Lazy<FloorCover> cover)
    {
        var compiler = new CriterionCompiler(days, rulebook);
        Days = days;
        IsSupposed = days.Herd.SupposesLater;
        Presence = new PresenceCriterion(days);
        SortAudience = SortOf(choice, rulebook);
        Sort = new SortCriterion(days, SortAudience, rulebook.Vocabulary.Calving?.Id);
        Sorts = new Sorts(days);
        Rules = [.. rulebook.Rules.Where(rule => rule.IsFor(choice.List)).Select(rule => Compile(rule, compiler, days, rulebook, choice))];
        Prefers = [.. rulebook.Prefers.Where(prefer => prefer.IsFor(choice.List)).Select(prefer => (
            prefer,
            prefer.IsBroken ? BrokenCriterion.Instance : compiler.Compile(prefer.Condition)))];
        BrokenParts = [.. rulebook.BrokenParts.Where(part => part.List is null || part.List == choice.List)];
        Floor = new FloorOfList([.. rulebook.Floor.Select(rule => Compile(rule, compiler, days, rulebook, choice))], choice.HasFloor, cover);
        Judged = [Presence, Sort, .. Rules.Where(rule => IsJudged(rule.Rule)), .. Floor.LiesUnder ? Floor.Rules : []];
        if (BrokenParts.Length > 0)
        {
            Judged = [.. Judged, BrokenCriterion.Instance];
        }

        All = new ListCriterion(Judged, Judged.Length);
    }

    /// <summary>Whether rows of days to come are supposed, so that nothing is sure.</summary>
    public bool IsSupposed { get; }

    /// <summary>One rule, ready to be asked.</summary>
    public static RuleCriterion Compile(Rule rule, CriterionCompiler compiler, HerdDays days, Rulebook rulebook, Choice choice)
    {
        compiler = rule.IfNotKnown == IfNotKnown.Pass ? compiler.ForPassing : compiler;
        return new RuleCriterion(
            rule,
            compiler.Compile(rule.Audience, rule.AppliesTo),
            rule.IsBroken ? BrokenCriterion.Instance : rule.IsSafety ? compiler.CompileShared(rule.Needs) : compiler.Compile(rule.Needs),
            new WaiverDays(days.Herd, rulebook.Waivers.Where(waiver => waiver.Rule == rule.Name)),
            MustHoldNowToo(rule, choice) ? days.KnownDay : int.MinValue);
    }

    /// <summary>
    /// Whether a past day is not enough: a cow that was found in calf since is in calf, whatever was known of her on the day. Only a list for
    /// looking asks what its own rules would have said then.
    /// </summary>
    private static bool MustHoldNowToo(Rule rule, Choice choice) => rule.IsOfTheFloor || (rule.IsSafety && choice.Use != ListUse.ForLookingOnly);

    /// <summary>Whether answers rest on a rule: not on one that is left to the day itself, unless a line of it could not be read.</summary>
    public static bool IsJudged(Rule rule) => !rule.OnTheDay || rule.IsBroken;

    /// <summary>A list drawn from another takes the other's sort: whoever is on that one only because nobody knows whether she
    /// has calved is no surer here.</summary>
    private static Audience SortOf(Choice choice, Rulebook rulebook) => choice.From switch
    {
        ChoiceFrom.Cows => Audience.Cows,
        ChoiceFrom.Heifers => Audience.Heifers,
        ChoiceFrom.AnotherList => SortOf(rulebook.Programme!.Choices.First(other => other.List == choice.OtherList), rulebook),
        _ => Audience.Females,
    };

    public HerdDays Days { get; }

    public PresenceCriterion Presence { get; }

    /// <summary>What sort of animal the list takes.</summary>
    public Audience SortAudience { get; }

    public SortCriterion Sort { get; }

    /// <summary>What sort of animal each one is, whatever the list takes.</summary>
    public Sorts Sorts { get; }

    public RuleCriterion[] Rules { get; }

    /// <summary>The program's own rules.</summary>
    public FloorOfList Floor { get; }

    public (Prefer Prefer, Criterion Condition)[] Prefers { get; }

    /// <summary>Lines that could not be read and may have been rules of this list.</summary>
    public BrokenPart[] BrokenParts { get; }

    /// <summary>Gates and rules one by one, but for those judged on the day itself.</summary>
    public Criterion[] Judged { get; }

    /// <summary>A(d): gates and rules together, but for those judged on the day itself.</summary>
    public Criterion All { get; }
}
