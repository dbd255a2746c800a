namespace Byrelaw.Language.Canonical;

/// <summary>Rules and preferences the one way: the first version as a block, each later one as a <c>change</c> that states what it changed.</summary>
internal static class RuleText
{
    /// <summary>The blocks of a rule, oldest version first.</summary>
    public static IEnumerable<string> Of(Rule rule) => Versions(rule, version => version.Before).Select(version =>
        version.Before is { } before ? Change(before, version) : Block($"{(rule.IsSafety ? "safety rule" : "rule")} {NameText.Text(rule.Name)}", Lines(version)));

    /// <summary>The blocks of a preference, oldest version first.</summary>
    public static IEnumerable<string> Of(Prefer prefer) => Versions(prefer, version => version.Before).Select(version =>
        version.Before is { } before ? Change(before, version) : Block($"prefer {NameText.Text(prefer.Name)}", Lines(version)));

    /// <summary>A head with lines below it.</summary>
    public static string Block(string head, IEnumerable<string?> lines) => string.Join("\n  ", lines.OfType<string>().Prepend(head));

    /// <summary>A condition after some words, with its list below it where it is one.</summary>
    public static string Condition(string before, Condition condition)
    {
        if (condition is ListCondition list)
        {
            return before + ConditionText.Head(list) + string.Concat(list.Items.Select(item => "\n    - " + ConditionText.Meaning.Of(item)));
        }

        // A line of nothing but a text would run on from the text above it, so a name in quotes stands in a list of one.
        var text = ConditionText.Meaning.Of(condition);
        var isTextAlone = before.Length == 0 && text[0] == '"' && condition is NamedCondition or SpellCondition { Windows.IsEmpty: true };
        return isTextAlone ? "all of\n    - " + text : before + text;
    }

    /// <summary><c>because</c>, <c>source</c> and <c>agreed by</c>, those that are given.</summary>
    public static IEnumerable<string?> Reasons(string? because, string? source, Agreement? agreement) =>
    [
        because is null ? null : $"because {NameText.Text(because)}",
        source is null ? null : $"source {NameText.Text(source)}",
        agreement is null ? null : $"agreed by {string.Join(", ", agreement.By.Select(NameText.Text))} on {NumberText.Of(agreement.On)}",
    ];

    private static IEnumerable<string?> Lines(Rule rule) =>
    [
        AppliesTo(rule), Condition("needs ", rule.Needs),
        rule.OnTheDay ? "on the day" : null,
        rule.IfNotKnown == IfNotKnown.Ask ? null : Instead(rule),
        .. Reasons(rule.Because, rule.Source, rule.Agreement),
    ];

    private static IEnumerable<string?> Lines(Prefer prefer) =>
    [
        Condition("", prefer.Condition), prefer.Counts == 1 ? null : Counts(prefer),
        .. Reasons(prefer.Because, prefer.Source, prefer.Agreement),
    ];

    private static string Change(Rule before, Rule after)
    {
        var needs = Condition("needs ", after.Stated);
        string?[] changed =
        [
            AppliesTo(after) == AppliesTo(before) ? null : AppliesTo(after),
            needs == Condition("needs ", before.Stated) ? null : needs,
            after.OnTheDay == before.OnTheDay ? null : "on the day",
            after.IfNotKnown == before.IfNotKnown ? null : Instead(after),
        ];
        return Change(after.Name, changed, needs, after.Because, after.Source == before.Source ? null : after.Source, after.Agreement);
    }

    private static string Change(Prefer before, Prefer after)
    {
        var condition = Condition("", after.Condition);
        string?[] changed =
        [
            condition == Condition("", before.Condition) ? null : condition,
            after.Counts == before.Counts ? null : Counts(after),
        ];
        return Change(after.Name, changed, condition, after.Because, after.Source == before.Source ? null : after.Source, after.Agreement);
    }

    /// <summary>A change that states again what was there before states <paramref name="atLeast"/>, for a change states something.</summary>
    private static string Change(string name, string?[] changed, string atLeast, string? because, string? source, Agreement? agreement)
    {
        var lines = changed.Any(line => line is not null) || source is not null ? changed : [atLeast];
        return Block($"change {NameText.Text(name)}", [.. lines, .. Reasons(because, source, agreement)]);
    }

    private static string? AppliesTo(Rule rule) => rule.Audience switch
    {
        Audience.Everyone => null,
        Audience.Named => $"applies to {NameText.Exact(rule.AppliesTo!.Define)}",
        var audience => $"applies to {audience.ToString().ToLowerInvariant()}",
    };

    private static string Instead(Rule rule) => $"if not known {rule.IfNotKnown.ToString().ToLowerInvariant()}";

    private static string Counts(Prefer prefer) => $"counts {NumberText.Of(prefer.Counts)}";

    private static List<T> Versions<T>(T last, Func<T, T?> before) where T : class
    {
        var versions = new List<T>();
        for (var version = last; version is not null; version = before(version))
        {
            versions.Add(version);
        }

        versions.Reverse();
        return versions;
    }
}
