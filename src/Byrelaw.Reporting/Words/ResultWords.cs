namespace Byrelaw.Reporting.Words;

/// <summary>A result of a test or a measure as people say it: <c>scan or blood or milk test</c> for <c>pregnancy test with method not hand</c>.</summary>
public static class ResultWords
{
    private const string Method = "method";

    /// <summary>What a test for pregnancy is called by its method.</summary>
    private static readonly Dictionary<string, string> Pregnancy = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ultrasound"] = "scan",
        ["blood"] = "blood test",
        ["milk"] = "milk test",
        ["hand"] = "test by hand",
    };

    /// <summary>Of a kind, with its filter: <c>body condition result</c>, <c>test by hand</c>, <c>BVD virus result by ear</c>.</summary>
    public static string Of(Kind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (kind.Filter is not { } filter)
        {
            return $"{kind.Name} result";
        }

        if (filter.Tests is not [DetailIs { Detail.Name: Method } method] || Methods(method) is not { IsEmpty: false } methods)
        {
            return $"{filter.Of.Name} result {filter.Text}";
        }

        return filter.Of.Name == "pregnancy test" && methods.All(Pregnancy.ContainsKey)
            ? string.Join(" or ", methods.Select(one => Pregnancy[one])).Replace("blood test or milk test", "blood or milk test", StringComparison.Ordinal)
            : $"{filter.Of.Name} result by {Phrases.Or(methods)}";
    }

    /// <summary>Of what is missing.</summary>
    public static string Of(Missing missing, ListReport list)
    {
        ArgumentNullException.ThrowIfNull(missing);
        ArgumentNullException.ThrowIfNull(list);
        var kind = missing.Filter.Length == 0 ? null
            : list.Herd.Vocabulary.Filtered.FirstOrDefault(one => one.Declaration.Name == missing.Subject && one.Filter!.Text == missing.Filter);
        return kind is not null ? Of(kind) : $"{missing.Subject} result{(missing.Filter.Length == 0 ? "" : " " + missing.Filter)}";
    }

    /// <summary>The methods that are meant, in the order of their declaration; none where that cannot be told.</summary>
    private static ImmutableArray<string> Methods(DetailIs test) =>
        test.Detail.Values.IsEmpty ? test.IsNot ? [] : test.Values
        : [.. test.Detail.Values.Where(value => test.Values.Contains(value, StringComparer.OrdinalIgnoreCase) != test.IsNot)];
}
