namespace Byrelaw.Language.Canonical;

/// <summary>Kinds the one way, with their filters.</summary>
internal static class KindText
{
    /// <summary><c>mating</c>, <c>mating with method natural</c>.</summary>
    /// <param name="kind">Which.</param>
    /// <param name="name">How a name is written inside a line.</param>
    /// <param name="of">What the kind itself is called here; its name where null.</param>
    public static string Of(Kind kind, Func<string, string> name, string? of = null) =>
        (of ?? name(kind.Declaration.Name)) + (kind.Filter is { } filter ? " " + Of(filter, name) : "");

    /// <summary><c>with method natural</c>.</summary>
    public static string Of(KindFilter filter, Func<string, string> name) => string.Join(' ', filter.Tests.Select(test => $"with {Of(test, name)}"));

    private static string Of(DetailTest test, Func<string, string> name) => test switch
    {
        DetailIs { Values: [var only] } one => $"{name(one.Detail.Name)} {(one.IsNot ? "not " : "")}{name(only)}",
        DetailIs some => $"{name(some.Detail.Name)} {(some.IsNot ? "not " : "")}one of {string.Join(", ", some.Values.Select(name))}",
        DetailNumber { Test.Comparison: Comparison.Exactly } number =>
            $"{name(number.Detail.Name)} {(number.IsNot ? "not " : "")}{DemandText.Of(number.Test, number.Detail.Unit, name)["exactly ".Length..]}",
        DetailNumber number => $"{name(number.Detail.Name)} {DemandText.Of(number.Test, number.Detail.Unit, name)}",
        _ => $"{name(test.Detail.Name)} recorded",
    };
}
