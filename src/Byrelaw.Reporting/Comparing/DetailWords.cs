using System.Text.RegularExpressions;

namespace Byrelaw.Reporting.Comparing;

/// <summary>One thing that differs, in a sentence.</summary>
internal static partial class DetailWords
{
    /// <summary>Such as <c>the number: “at least 63 days” was “at least 56 days”</c>.</summary>
    public static string Of(Detail detail)
    {
        var said = Said(detail);
        return detail.Part is null ? said : $"in “{detail.Part}”, {said}";
    }

    private static string Said(Detail detail) => detail switch
    {
        { Aspect: Aspect.Part, Was: null } => $"new in the list: “{detail.Is}”",
        { Aspect: Aspect.Part, Is: null } => $"no longer in the list: “{detail.Was}”",
        { Aspect: Aspect.Line, Was: null } => $"new: “{detail.Is}”",
        { Aspect: Aspect.Line } => $"gone: “{detail.Was}”",
        { Aspect: Aspect.Because } => Text("the reason", detail),
        { Aspect: Aspect.Source } => Text("the source", detail),
        { Aspect: Aspect.Agreement } => $"{(detail.Is is null ? "nobody's agreement is written down any more" : $"agreed by {Day(detail.Is)}")}; before: {(detail.Was is null ? "nobody" : Day(detail.Was))}",
        { Aspect: Aspect.Until } => $"it runs until {Day(detail.Is!)}, not {Day(detail.Was!)}",
        { Aspect: Aspect.OnTheDay } => detail.Is == "on the day" ? "it is judged on the day only, by the person beside her" : "it is judged beforehand, and no longer on the day only",
        { Aspect: Aspect.Safety } => detail.Is == "rule" ? "it is no longer a safety rule" : "it is a safety rule now",
        { Aspect: Aspect.Readable } => detail.Is == "readable" ? "it can be read now" : $"{detail.Is}; before: {detail.Was}",
        { Aspect: Aspect.History } => "it says the same, but has come about by other changes",
        { Aspect: Aspect.Points } => $"it counts {detail.Is}, and counted {detail.Was}",
        { Aspect: Aspect.IfNotKnown } => $"if not known: {detail.Is}, and before: {detail.Was}",
        { Aspect: Aspect.Audience } => $"it is for {detail.Is}, and was for {detail.Was}",
        { Aspect: Aspect.List } => $"it belongs to {detail.Is}, and belonged to {detail.Was}",
        { Aspect: Aspect.FurtherNames } => $"further names: {Or(detail.Is, "none")}; before: {Or(detail.Was, "none")}",
        _ => $"{What(detail.Aspect)}: “{detail.Is}” was “{detail.Was}”",
    };

    private static string What(Aspect aspect) => aspect switch
    {
        Aspect.Number => "the number",
        Aspect.Window => "the days looked at",
        Aspect.Counted => "what counts",
        Aspect.Values => "what is good",
        Aspect.Sample => "how many are sampled",
        Aspect.Together => "how the list is put together",
        Aspect.Unit => "the unit or scale",
        Aspect.Declaration => "the declaration",
        _ => "the demand",
    };

    private static string Text(string what, Detail detail) => (detail.Was, detail.Is) switch
    {
        (null, { } added) => $"{what} is now given: {added}",
        (_, null) => $"{what} is no longer given",
        ({ } was, { } @is) => $"{what}: “{@is}” was “{was}”",
    };

    private static string Or(string? text, string nothing) => string.IsNullOrEmpty(text) ? nothing : text;

    private static string Day(string text) =>
        IsoDate().Replace(text, match => LocalDatePattern.Iso.Parse(match.Value) is { Success: true, Value: var day } ? Dates.Long(day) : match.Value);

    [GeneratedRegex(@"[0-9]{4}-[0-9]{2}-[0-9]{2}")]
    private static partial Regex IsoDate();
}
