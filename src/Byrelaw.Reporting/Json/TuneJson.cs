namespace Byrelaw.Reporting.Json;

/// <summary>A rule's numbers tuned, for programs. Keys are stable; a value that is not there is null, and so is the end of a range without one.</summary>
public sealed record TuneJson(
    string Programme, string TunedWith, string Rulebook, string Records, string KnownDay, string List, string JudgedFrom, string JudgedTo,
    string Rule, string AsksFor, IReadOnlyList<TunedNumberJson> Numbers, IReadOnlyList<PairJson> Pairs)
{
    /// <summary>The same facts as the page.</summary>
    public static string Of(RuleTuning tuned)
    {
        ArgumentNullException.ThrowIfNull(tuned);
        var choice = tuned.Judged.Choice;
        return SeenJson.Of(
            new TuneJson(
                tuned.Rulebook.Programme?.Name ?? "", JudgedWith.NameAndVersion, Fingerprint.Of(tuned.Rulebook), tuned.Herd.Fingerprint,
                ReachWords.Iso(tuned.Herd), choice.List, LocalDatePattern.Iso.Format(choice.JudgedFrom), LocalDatePattern.Iso.Format(choice.JudgedTo),
                tuned.Rule.Name, Words.ConditionWords.Of(tuned.Rule.Shown), [.. tuned.Numbers.Select(number => TunedNumberJson.Of(number, tuned))], [.. tuned.Pairs.Select(PairJson.Of)]),
            JsonShapes.Readable.TuneJson);
    }
}

/// <summary>One number over all its values.</summary>
public sealed record TunedNumberJson(
    string What, string? Define, string Condition, string Part, bool IsUpper, string Sort, string Unit, decimal Value, IReadOnlyList<string> AlsoMoves,
    IReadOnlyList<LayerValueJson> Layers, IReadOnlyList<TuneStepJson> Steps, IReadOnlyList<MarginJson> Margins, IReadOnlyList<TunedAnimalJson> Animals, LinesJson? Lines, IReadOnlyList<string> Cautions)
{
    internal static TunedNumberJson Of(TunedNumber number, RuleTuning tuned)
    {
        var (one, tuning) = (number.Number, number.Tuning);
        return new TunedNumberJson(
            NumberWords.Title(one), one.Through.IsEmpty ? null : one.Through[^1], Words.ConditionWords.Of(one.Condition), Keys.Snake($"{one.Number.Part}"), one.Number.IsHigh,
            Keys.Snake($"{one.Number.Sort}"), NumberWords.Unit(one), tuning.Current,
            [.. MovedBy.Rules(tuned.Rulebook, one).Select(rule => rule.Name).Where(name => name != tuned.Rule.Name), .. MovedBy.Prefers(tuned.Rulebook, one).Select(prefer => prefer.Name)],
            [.. LayerWords.Of(new RuleTuningSide(one, tuned.Rulebook)).Select(layer => LayerValueJson.Of(layer.Name, layer.Version))],
            [.. tuning.Steps.Select(TuneStepJson.Of)], [.. number.Margins.Select(MarginJson.Of)],
            [.. tuning.Animals.Where(animal => animal.Runs.Length > 1).Select(TunedAnimalJson.Of)],
            TuneHead.Example(tuning) is { } value ? LinesJson.Of(tuned, one, value) : null, TuneCautions.Of(tuning, tuned.Rulebook));
    }
}

/// <summary>The value that one layer of the rule uses; null where that layer asks for something of another form.</summary>
public sealed record LayerValueJson(string Whose, double? Value, string File, int Line, string? Source)
{
    internal static LayerValueJson Of(string whose, NumberVersion version) =>
        new(whose, version.Value, version.Rule.Span.File?.Path ?? "", version.Rule.Span.File is null ? 0 : version.Rule.Span.Line, version.Rule.Source);
}

/// <summary>Values at which nobody's answer changes, both ends included, with how many have which answer.</summary>
public sealed record TuneStepJson(decimal? From, decimal? To, int Ready, int OnCourse, int Later, int Ask, int No)
{
    internal static TuneStepJson Of(TuningStep step) => new(
        step.Range.From, step.Range.To, step.Count(Answer.Ready), step.Count(Answer.OnCourse), step.Count(Answer.Later), step.Count(Answer.Ask), step.Count(Answer.No));
}

/// <summary>Animals next to the value in force, and what tells them from the rest.</summary>
public sealed record MarginJson(bool LetsIn, decimal Value, IReadOnlyList<string> Animals, IReadOnlyList<CommonJson> InCommon)
{
    internal static MarginJson Of(MarginGroup group) => new(
        group.IsLetIn, group.Value, [.. group.Animals.Select(animal => animal.Number)],
        [.. group.Common.Select(common => new CommonJson(
            Keys.Snake($"{common.Trait.Kind}"), common.Trait.Name.Length == 0 ? null : common.Trait.Name, common.Trait.Value, common.InGroup, common.GroupSize, common.InAll, common.All))]);
}

/// <summary>One trait: how many of the group have it, and how many of the list.</summary>
public sealed record CommonJson(string Kind, string? Fact, string Value, int InGroup, int Group, int InList, int List);

/// <summary>One animal's answers over all values; those that no value changes are left out.</summary>
public sealed record TunedAnimalJson(string Animal, IReadOnlyList<AnswerRangeJson> Answers)
{
    internal static TunedAnimalJson Of(TunedAnimal animal) => new(
        animal.Number, [.. animal.Runs.Select(run => new AnswerRangeJson(run.Range.From, run.Range.To, Keys.Of(run.Answer)))]);
}

/// <summary>Values with one answer, both ends included.</summary>
public sealed record AnswerRangeJson(decimal? From, decimal? To, string Answer);

/// <summary>What to write into the farm's own file for another value. With a file and line they stand in the place of what the block there asks for.</summary>
public sealed record LinesJson(decimal Value, string? File, int? Line, IReadOnlyList<string> Lines)
{
    internal static LinesJson Of(RuleTuning tuned, RuleNumber number, decimal value)
    {
        var lines = LinesToWrite.For(tuned.Rulebook, number, value);
        return new LinesJson(value, lines.In?.File.Path, lines.In?.Line, lines.Lines);
    }
}

/// <summary>Two numbers at once.</summary>
public sealed record PairJson(
    string FirstRule, string First, string SecondRule, string Second, IReadOnlyList<decimal> FirstValues, IReadOnlyList<decimal> SecondValues, IReadOnlyList<IReadOnlyList<PairCellJson>> Cells)
{
    internal static PairJson Of(PairTuning pair) => new(
        pair.First.Rule.Name, NumberWords.Title(pair.First), pair.Second.Rule.Name, NumberWords.Title(pair.Second), pair.FirstValues, pair.SecondValues,
        [.. pair.Cells.Select(row => (IReadOnlyList<PairCellJson>)[.. row.Select(cell => new PairCellJson(cell.Ready, cell.OnCourse, cell.Ask))])]);
}

/// <summary>How many have which answer with both values.</summary>
public sealed record PairCellJson(int Ready, int OnCourse, int Ask);
