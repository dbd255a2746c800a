using Byrelaw.Planning.FindingOut;

namespace Byrelaw.Reporting.Plans;

/// <summary>Says what is to be found out of an animal, and on which days.</summary>
internal static class AskedWords
{
    /// <summary><c>pregnancy test, 18 to 24 October 2026</c>; <c>heat, to be looked up</c>.</summary>
    public static string Of(ToFindOut asked, int year) => asked.Record switch
    {
        { WithoutLine: > 0 and var line, Value.Length: 0 } => $"{asked.Record.Kind.Name}, line {line} to be mended",
        { WithoutLine: > 0 } => $"{asked.Record.Kind.Name}, whose result is awaited",
        _ when asked.Days.IsEmpty => $"{asked.Record.Kind.Name}, to be looked up",
        _ => $"{asked.Record.Kind.Name} {Phrases.And([.. asked.Days.Select(run => run.Start == run.End ? $"on {Dates.Long(run.End, year)}" : $"from {Dates.Long(run.Start, year)} to {Dates.Long(run.End, year)}")])}",
    };
}
