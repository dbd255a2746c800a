using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Checking.MadeUp;

/// <summary>Makes up the details of an entry that a filter means.</summary>
internal static class FittingDetails
{
    /// <summary>One value for each detail that is spoken of; where none was found, the judge will say so.</summary>
    public static ImmutableArray<(string Detail, string Value)> For(KindFilter filter) =>
        [.. filter.Tests.DistinctBy(test => test.Place).Select(test => (test.Detail.Name, For(test)))];

    private static string For(DetailTest test) => test switch
    {
        DetailIs { IsNot: false } one => one.Values[0],
        DetailIs none => test.Detail.Values.FirstOrDefault(value => !none.Values.Contains(value)) ?? (test.Detail.Type == FactType.Date ? "2000-01-01" : "other than that"),
        DetailNumber number => For(number),
        _ => test.Detail.Type switch
        {
            FactType.OneOf => test.Detail.Values[0],
            FactType.Number => Written(test.Detail.Scale?.From ?? 1),
            FactType.Amount => $"1 {test.Detail.Unit!.Symbol}",
            FactType.Date => "2000-01-01",
            _ => "something",
        },
    };

    private static string For(DetailNumber number)
    {
        var low = number.Test.Low.Value;
        var fitting = number.IsNot || number.Test.Comparison == Comparison.MoreThan ? low + 1 : number.Test.Comparison == Comparison.LessThan ? low - 1 : low;
        return number.Detail.Unit is { } unit ? $"{Written(fitting)} {unit.Symbol}" : Written(fitting);
    }

    private static string Written(double value) => value.ToString(CultureInfo.InvariantCulture);
}
