namespace Byrelaw.Workshop.Tuning;

/// <summary>
/// What a farm writes into its own file to have another number. Who agreed, when and why is for people to say: the lines leave that
/// open, and a file with the blanks still in it cannot be read. Nothing is written in the place of what a safety rule asks: a change of one only adds, so that no
/// line that is pasted loosens it.
/// </summary>
/// <param name="In">The farm's own block in which the line stands to be changed; null where the lines are new ones for the end of its file.</param>
/// <param name="Lines">The lines, without line ends.</param>
public sealed record LinesToWrite(SourceSpan? In, ImmutableArray<string> Lines)
{
    /// <summary>Stands for the reason.</summary>
    public const string Why = "\"(why this farm differs)\"";

    /// <summary>Stands for who agreed.</summary>
    public const string Who = "\"(who agreed)\"";

    /// <summary>Stands for the day.</summary>
    public const string Day = "(the day)";

    /// <summary>The lines for one value of a number.</summary>
    public static LinesToWrite For(Rulebook rulebook, RuleNumber number, decimal value)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(number);
        if (number.Define is { } place)
        {
            var define = rulebook.Defines[place];
            var condition = NumbersOfRule.With(define.Condition, number, value);
            return IsOwn(rulebook, define.Span) && !rulebook.Rules.Any(rule => rule.IsSafety && MovedBy.Rules(rulebook, number).Contains(rule)) ? new LinesToWrite(define.Span, Split(RuleText.Condition("", condition))) : OwnDefine(rulebook, place, condition);
        }

        var needs = RuleText.Condition("needs ", NumbersOfRule.With(number.Rule.Stated, number, value));
        return IsOwn(rulebook, number.Rule.Span) && !number.Rule.IsSafety
            ? new LinesToWrite(number.Rule.Span, Split(needs))
            : new LinesToWrite(null, Change(number.Rule.Name, [needs]));
    }

    /// <summary>A base file's define cannot be changed from above: the farm defines its own, and the rules speak of that.</summary>
    private static LinesToWrite OwnDefine(Rulebook rulebook, int place, Condition condition)
    {
        var moved = MovedBy.Defines(rulebook, place);
        var names = moved.ToDictionary(index => index, index => NewName(rulebook, rulebook.Defines[index].Name));
        var blocks = new List<IEnumerable<string>>();
        foreach (var index in moved.Order())
        {
            var own = index == place ? condition : rulebook.Defines[index].Condition;
            blocks.Add(Split(RuleText.Block($"define {NameText.Exact(names[index])}", [RuleText.Condition("", Renamed(own, names))])));
        }

        foreach (var rule in rulebook.Rules)
        {
            var (speaks, isFor) = (MovedBy.Speaks(rule.Needs, moved), rule.AppliesTo is { } named && moved.Contains(named.Index));
            if (rule.IsSafety)
            {
                // A change of it only adds, so one that asks less says nothing.
                (speaks, isFor) = (speaks && !TriedRule.AsksNoMore(rule, rulebook, rulebook with { Defines = rulebook.Defines.SetItem(place, rulebook.Defines[place] with { Condition = condition }) }), false);
            }

            if (speaks || isFor)
            {
                string?[] lines =
                [
                    isFor ? $"applies to {NameText.Exact(names[rule.AppliesTo!.Index])}" : null,
                    speaks ? RuleText.Condition("needs ", Renamed(rule.Stated, names)) : null,
                ];
                blocks.Add(Change(rule.Name, lines.OfType<string>()));
            }
        }

        blocks.AddRange(rulebook.Prefers.Where(prefer => MovedBy.Speaks(prefer.Condition, moved))
            .Select(prefer => (IEnumerable<string>)Change(prefer.Name, [RuleText.Condition("", Renamed(prefer.Condition, names))])));
        return new LinesToWrite(null, [.. blocks.SelectMany((block, i) => i == 0 ? block : block.Prepend(""))]);
    }

    private static ImmutableArray<string> Change(string name, IEnumerable<string> lines) => Split(RuleText.Block(
        $"change {NameText.Text(name)}", [.. lines, $"because {Why}", $"agreed by {Who} on {Day}"]));

    private static ImmutableArray<string> Split(string block) => [.. block.Split('\n')];

    private static Condition Renamed(Condition condition, Dictionary<int, string> names) => condition.With(new OtherNames(names))!;

    private static string NewName(Rulebook rulebook, string name)
    {
        var taken = rulebook.Defines.Select(define => NameFolding.Fold(define.Name)).ToHashSet();
        var own = $"{name} here";
        for (var next = 2; taken.Contains(NameFolding.Fold(own)); next++)
        {
            own = $"{name} here {next}";
        }

        return own;
    }

    private static bool IsOwn(Rulebook rulebook, SourceSpan span) => span.File is not null && ReferenceEquals(span.File, rulebook.Files.FirstOrDefault());

    private sealed class OtherNames(Dictionary<int, string> names) : OtherParts
    {
        public override NamedCondition? Define(NamedCondition named) => names.TryGetValue(named.Index, out var name) ? named with { Define = name } : named;
    }
}
