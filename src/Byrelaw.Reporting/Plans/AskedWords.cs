using Byrelaw.Planning.FindingOut;

namespace Byrelaw.Reporting.Plans;

/// <summary>Says what is to be found out of an animal, and on which days.</summary>
internal static class AskedWords
{
    /// <summary><c>pregnancy test, 18 to 24 October 2026</c>; <c>heat, to be looked up</c>; <c>1036's liver copper, whose result is awaited</c>.</summary>
    public static string Of(ToFindOut asked, int year) => asked.Record switch
    {
        { WithoutLine: > 0 and var line, Value.Length: 0 } => $"{asked.Record.Kind.Name}, line {line} to be mended",
        { IsAwaited: true } => $"{What(asked.Record)}, whose result is awaited",
        _ when asked.Days.IsEmpty => $"{What(asked.Record)}, to be looked up",
        _ => $"{What(asked.Record)} {Phrases.And([.. asked.Days.Select(run => run.Start == run.End ? $"on {Dates.Long(run.End, year)}" : $"from {Dates.Long(run.Start, year)} to {Dates.Long(run.End, year)}")])}",
    };

    /// <summary>All of it, one after the other.</summary>
    public static string All(IEnumerable<ToFindOut> asked, int year)
    {
        var said = asked.Select(one => Of(one, year)).ToList();
        return said.Exists(one => one.Contains(" and ", StringComparison.Ordinal) || one.Contains(',', StringComparison.Ordinal)) ? string.Join("; ", said) : Phrases.And(said);
    }

    /// <summary><c>liver copper</c>; <c>1036's liver copper</c> where it is another's of her mob.</summary>
    public static string What(AskedRecord record) => record.Whose.Length == 0 ? record.Kind.Name : $"{record.Whose.Replace("mob:", "mob ", StringComparison.Ordinal)}'s {record.Kind.Name}";

    /// <summary>Who waits for a sample's result; nothing where nobody does.</summary>
    public static IEnumerable<string> Waiting(IEnumerable<WaitsForIt> waiting)
    {
        foreach (var session in waiting.GroupBy(one => (one.Session, one.BackInTime)).OrderBy(one => one.Key.Session))
        {
            var numbers = session.SelectMany(one => one.Numbers).Distinct().Order(AnimalNumberOrder.Instance).ToList();
            var isOne = numbers.Count == 1;
            yield return $"Until the result is back, {Numbers.Count(numbers.Count, "animal of the mob that is", "animals of the mob that are")} named for session {session.Key.Session} {(isOne ? "is" : "are")} not sure either: {Phrases.And(numbers)}. "
                + (session.Key.BackInTime ? $"On the days that are told it is back before {(isOne ? "she is treated or carries" : "they are treated or carry")}." : $"No day is left on which it is back in time for {(isOne ? "her" : "them")}: say first which of them matters more.");
        }
    }
}
