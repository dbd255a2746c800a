namespace Byrelaw.Reporting.Tuning;

/// <summary>What a tuning's terminal text and page say alike.</summary>
internal static class TuneHead
{
    /// <summary>Holds for every table of values.</summary>
    public const string OfTheTable = "Between two rows the same animals may be used as at the one that is nearer to the value in force; … stands for rows left out.";

    /// <summary><c>recipients, judged for 20 and 21 October 2026; records to 4 October 2026</c>.</summary>
    public static string Standing(RuleTuning tuned)
    {
        var choice = tuned.Judged.Choice;
        return $"{choice.List}, judged for {Dates.Range(choice.JudgedFrom, choice.JudgedTo)}; {ReachWords.Of(tuned.Herd)}";
    }

    /// <summary>What stands over its page.</summary>
    public static PageHead Of(RuleTuning tuned) => new(
        tuned.Rulebook.Programme?.Name ?? "", new HeadFact("list", tuned.Judged.Choice.List), new HeadFact("judged for", Dates.Range(tuned.Judged.Choice.JudgedFrom, tuned.Judged.Choice.JudgedTo)), ReachWords.Fact(tuned.Herd))
    {
        Devices = DeviceWords.Of(tuned.Herd, tuned.Rulebook),
    };

    /// <summary><c>Asks for: at least 56 days since last calving, for cows.</c></summary>
    public static string Asks(RuleTuning tuned)
    {
        var audience = RuleWords.Audience(tuned.Rule);
        return $"Asks for: {ConditionWords.Of(tuned.Rule.Shown)}{(audience.Length == 0 ? "" : $", {audience}")}.{(tuned.Rule.IsSafety ? " It is a safety rule: no value makes it ask less than it does now." : "")}";
    }

    /// <summary>Where the number stands and which other rules it moves; empty where it stands in the rule itself.</summary>
    public static string Moves(RuleTuning tuned, RuleNumber number)
    {
        if (number.Define is not { } define)
        {
            return "";
        }

        var place = tuned.Rulebook.Defines[define];
        var others = MovedBy.Rules(tuned.Rulebook, number).Where(rule => rule.Name != tuned.Rule.Name).Select(rule => rule.List == tuned.Rule.List ? $"“{rule.Name}”" : $"“{rule.Name}” ({rule.List})")
            .Concat(MovedBy.Prefers(tuned.Rulebook, number).Select(prefer => $"the preference “{prefer.Name}”")).ToList();
        var moves = others.Count == 0 ? "No other rule speaks of it." : $"It moves other rules too, here and in the counts: {Phrases.And(others)}.";
        return $"This number stands in “{place.Name}” ({ChangeHistory.Place(place.Span)}). {moves}";
    }

    /// <summary>The value the lines to write are shown for: the nearest that lets somebody in, else the nearest that keeps somebody out; null where none does.</summary>
    public static decimal? Example(NumberTuning tuning)
    {
        if (!UsableBands.Any(tuning))
        {
            return null;
        }

        int?[] steps = [.. UsableBands.Below(tuning).Take(1), .. UsableBands.Above(tuning).Take(1)];
        var step = steps.FirstOrDefault(one => tuning.Changes(tuning.CurrentStep, one!.Value).Any(change => change.IsLetIn)) ?? steps.FirstOrDefault();
        return step is { } found ? tuning.ValueOf(found) : null;
    }

    /// <summary>What to do with the lines to write.</summary>
    public static string HowToWrite(RuleTuning tuned, RuleNumber number, decimal value, LinesToWrite lines)
    {
        var file = tuned.Rulebook.Files.IsEmpty ? "the farm's own file" : tuned.Rulebook.Files[0].Path;
        var where = lines.In is { } block ? $"in the block at {ChangeHistory.Place(block)}, in the place of what it asks for now, and renew its reason and who agreed" : $"at the end of {file}, with the reason, who agreed and the day";
        return $"To have {NumberWords.Value(number, value)} on this farm, write {where}:";
    }

    /// <summary>The lines.</summary>
    public static ImmutableArray<string> Lines(RuleTuning tuned, RuleNumber number, decimal value) => LinesToWrite.For(tuned.Rulebook, number, value).Lines;
}
