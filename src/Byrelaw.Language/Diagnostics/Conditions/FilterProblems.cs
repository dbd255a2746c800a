namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a filter: <c>mating with method natural</c>.</summary>
internal static class FilterProblems
{
    public static Diagnostic NoSuchDetail(SourceSpan at, Kind kind)
    {
        string[] names = [.. kind.Details.Select(detail => detail.Name)];
        var near = NearestName.To(at.Text, names);
        return Problem.Error(
            "B0335", at, $"{Quoted.Of(at)} is no detail of {Quoted.Of(kind.Name)}",
            names.Length == 0 ? "it has none" : $"its {(names.Length == 1 ? "detail is" : "details are")} {Quoted.Either(names)}",
            near is not null ? $"did you mean `{near}`?" : $"declare it, as in `add to {kind.Name}  with {at.Text} is text`")
            .OrAny(near is null ? [] : [new Proposal(at, near)]);
    }

    public static Diagnostic OtherType(SourceSpan at, EntryDetail detail) => Problem.Error(
        "B0336", at, $"{Quoted.Of(at)} does not go with {Quoted.Of(detail.Name)}",
        detail.Type switch
        {
            FactType.Number or FactType.Amount => "a number is compared",
            FactType.Date => "a date is expected",
            _ => "a word is not compared",
        },
        detail.Type switch
        {
            FactType.Number or FactType.Amount => $"write a number, or `at least` and a number, after `with {detail.Name}`",
            FactType.Date => $"write a date such as `2026-10-19`, or `recorded`, after `with {detail.Name}`",
            _ => $"write a value, `not` and a value, or `one of` and values, after `with {detail.Name}`",
        });
}
