namespace Byrelaw.Language.Canonical;

/// <summary>A list of conditions as one says it: <c>A; and B</c> for all of them, <c>either A; or B</c> for any.</summary>
internal static class SpokenList
{
    /// <summary>On one line. Between conditions stands a semicolon, for commas, <c>and</c> and <c>or</c> stand within them.</summary>
    public static string Of(ListCondition list, Func<Condition, string> say)
    {
        var items = list.Items.Select(item => item is ListCondition ? $"({say(item)})" : say(item)).ToList();
        return (list.Kind, items) switch
        {
            (ListKind.AllOf or ListKind.AnyOf, [var only]) => only,
            (ListKind.AllOf, _) => Joined(items, "and"),
            (ListKind.AnyOf, _) => $"either {Joined(items, "or")}",
            (ListKind.NoneOf, _) => $"none of these: {string.Join("; ", items)}",
            _ => $"at least {NumberText.Of(list.Count)} of these: {string.Join("; ", items)}",
        };
    }

    private static string Joined(List<string> items, string last) => $"{string.Join("; ", items[..^1])}; {last} {items[^1]}";
}
