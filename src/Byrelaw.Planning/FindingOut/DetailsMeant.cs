using System.Globalization;

namespace Byrelaw.Planning.FindingOut;

/// <summary>Details with which an entry is one of those that a filter means.</summary>
internal static class DetailsMeant
{
    /// <summary>All of them; null where nothing can be said that fits, such as of a text that must not be another.</summary>
    public static ImmutableArray<(string Name, string Value)>? Of(Kind kind)
    {
        var details = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (var test in kind.Filter?.Tests ?? [])
        {
            if (Value(test) is not { } value)
            {
                return null;
            }

            details.Add((test.Detail.Name, value));
        }

        return details.ToImmutable();
    }

    private static string? Value(DetailTest test) => test switch
    {
        DetailIs { IsNot: false } one => one.Values[0],
        DetailIs one => one.Detail.Values.FirstOrDefault(value => one.Values.All(not => NameFolding.Fold(not) != NameFolding.Fold(value))),
        DetailNumber { IsNot: false } one => one.Test.Low.Value.ToString("R", CultureInfo.InvariantCulture),
        DetailRecorded { Detail.Values: [var first, ..] } => first,
        _ => null,
    };
}
