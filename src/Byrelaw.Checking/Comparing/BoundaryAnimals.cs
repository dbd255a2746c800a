using Byrelaw.Workshop.Comparing;

namespace Byrelaw.Checking.Comparing;

/// <summary>A made-up animal of which two versions of a rule say something different.</summary>
/// <param name="Rule">The rule, by its new name.</param>
/// <param name="Animal">The animal, with as little on record as shows it.</param>
/// <param name="Rows">What is on record of her; all else is said not to have happened.</param>
/// <param name="Day">The day she is judged for.</param>
/// <param name="Old">What the old version says; true where there was none.</param>
/// <param name="New">What the new one says; true where there is none.</param>
public sealed record BoundaryAnimal(string Rule, MadeUpAnimal Animal, ImmutableArray<MadeUpRow> Rows, LocalDate Day, Truth Old, Truth New);

/// <summary>Finds made-up animals that sit on the limits of a changed rule and show what the change does. What they are told is judged, not worked out beside.</summary>
public static class BoundaryAnimals
{
    private const int Tried = 400;
    private const int Shrunk = 40;
    private const int ShownOfAShape = 2;
    private const int ShownOfARule = 4;

    /// <summary>Those of every rule that differs or speaks of a define that does; none for rules that look at her mob or at the herd.</summary>
    public static ImmutableArray<BoundaryAnimal> Of(RulebookComparison between)
    {
        ArgumentNullException.ThrowIfNull(between);
        var felt = between.Differences.Where(difference => difference.MayChangeAnswers && difference is RuleDifference or DefineDifference);
        var rules = felt.SelectMany(difference => difference is DefineDifference define ? define.Touches : [difference.Name]).Distinct();
        return [.. rules.SelectMany(rule => Of(between, rule))];
    }

    private static IEnumerable<BoundaryAnimal> Of(RulebookComparison between, string rule)
    {
        var (old, @new) = (Only(rule, between.Mix([])), Only(rule, between.Mix(between.Differences)));
        var (ofOld, ofNew) = (new Ingredients(old), new Ingredients(@new));
        if (ofOld.LooksAtOthers || ofNew.LooksAtOthers || old.Rules.Concat(@new.Rules).Any(one => one.IsBroken))
        {
            return [];
        }

        var trial = new TwoTrials(old, @new, old.Programme!.Choices[0]);
        var candidates = new MadeUpCandidates(trial.Day, @new.Vocabulary.Calving, ofOld, ofNew);
        var differing = trial.Differing([.. Enumerable.Range(1, Tried).Select(candidates.Next)]);
        return trial.Smallest([.. differing.OrderBy(told => told.Candidate.Rows.Length).Take(Shrunk)])
            .DistinctBy(told => $"{told.Candidate.Animal.Born} {Days(told.Candidate)} {Shape(told)}")
            .GroupBy(Shape).OrderBy(shape => shape.First().Candidate.Rows.Length).ThenBy(shape => shape.Key, StringComparer.Ordinal)
            .SelectMany(Ends)
            .Take(ShownOfARule)
            .Select(told => new BoundaryAnimal(rule, told.Candidate.Animal, told.Candidate.Rows, trial.Day, told.Old, told.New));
    }

    /// <summary>Of animals that differ in dates only, those at the two ends.</summary>
    private static IEnumerable<(Candidate Candidate, Truth Old, Truth New)> Ends(IEnumerable<(Candidate Candidate, Truth Old, Truth New)> shape)
    {
        var ordered = shape.OrderBy(told => $"{Days(told.Candidate)} {told.Candidate.Animal.Born}", StringComparer.Ordinal).ToList();
        return ordered.Count <= ShownOfAShape ? ordered : [ordered[0], ordered[^1]];
    }

    private static string Days(Candidate candidate) => string.Join(' ', candidate.Rows.Select(row => LocalDatePattern.Iso.Format(row.Date)));

    private static string Shape((Candidate Candidate, Truth Old, Truth New) told) =>
        $"{told.Old} {told.New} {string.Join(' ', told.Candidate.Rows.Select(row => $"{row.Kind} {row.Value}"))} "
        + string.Join(' ', told.Candidate.Animal.Facts.OrderBy(fact => fact.Key, StringComparer.Ordinal).Select(fact => $"{fact.Key} {fact.Value}"));

    /// <summary>The rulebook with one rule, unwaived, and a list for it.</summary>
    private static Rulebook Only(string rule, Rulebook rulebook)
    {
        var day = rulebook.Programme?.FinalTransfer ?? new LocalDate(2026, 10, 20);
        var nowhere = new SourceSpan(new SourceFile("", ""), 0, 0);
        var choice = new Choice("made up", ChoiceFrom.Females, [], null, day, day, nowhere) { Use = ListUse.ForLookingOnly };
        var programme = rulebook.Programme is { } own ? own with { Choices = [choice] } : new Programme("made up", [], [choice], nowhere);
        return rulebook with
        {
            Rules = [.. rulebook.Rules.Where(one => one.Name == rule).Select(one => one with { List = choice.List, OnTheDay = false })],
            Prefers = [],
            Waivers = [],
            BrokenParts = [],
            Programme = programme,
        };
    }
}
