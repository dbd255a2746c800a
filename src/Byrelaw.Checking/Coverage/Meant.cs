using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Checking.Coverage;

/// <summary>Whether a record of an example is one that a condition means, by its details too.</summary>
internal static class Meant
{
    /// <summary>By any of some kinds.</summary>
    public static bool ByAny(IEnumerable<Kind> kinds, ExampleRecord record) => kinds.Any(kind => By(kind, record));

    private static bool By(Kind kind, ExampleRecord record) =>
        kind.Declaration.Id == record.Kind.Id && (kind.Filter is not { } filter || filter.Tests.All(test => Holds(test, record)));

    /// <summary>Numbers are not looked at: the judge says what they are, and these only which side an example shows.</summary>
    private static bool Holds(DetailTest test, ExampleRecord record)
    {
        var said = record.Details.FirstOrDefault(detail => detail.Detail == test.Detail.Name).Value;
        var value = string.IsNullOrEmpty(said) && test.Detail.BlankIs >= 0 ? test.Detail.Values[test.Detail.BlankIs] : said;
        return value is not null && (test is not DetailIs one || one.Values.Any(other => NameFolding.Fold(other) == NameFolding.Fold(value)) != one.IsNot);
    }
}
