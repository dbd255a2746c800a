using Byrelaw.Judging.Verdicts;

namespace Byrelaw.Reporting.Words;

/// <summary>What is not on record, as the thing to find out.</summary>
public static class MissingWords
{
    /// <summary>The thing to find out with the days it may be dated: <c>a pregnancy test from 30 Aug</c>.</summary>
    public static string Of(Missing missing, ListReport list) => What(missing, list) + When(missing, list);

    /// <summary>The thing to find out, without days.</summary>
    public static string What(Missing missing, ListReport list) => missing.Reason switch
    {
        MissingReason.NoResult => $"a result of {missing.Subject}",
        MissingReason.ResultPending => $"the result of {missing.Subject}{Place(missing, list)}, taken but not known",
        MissingReason.ResultTooVague => $"a closer result of {missing.Subject}",
        MissingReason.NotKept => $"whether there was any {missing.Subject}",
        MissingReason.NeverRecorded => $"whether there ever was a {missing.Subject}",
        MissingReason.UnreadableRow => $"what {PlaceOf(missing, list)} says of {missing.Subject}",
        MissingReason.FactMissing => $"{missing.Subject}, which is blank in {list.Herd.AnimalsFile}",
        MissingReason.FactUnreadable => $"{missing.Subject}, which cannot be read in {PlaceOf(missing, list)}",
        MissingReason.TooFewOfTheMob when missing.Needed > 0 =>
            $"{missing.Subject} of {Numbers.Count(missing.Needed, "more animal", "more animals")} in her mob",
        MissingReason.TooFewOfTheMob => $"{missing.Subject} of more animals in her mob",
        MissingReason.MobNotKnown => "which mob she is in",
        _ => $"{missing.Subject} of the others in the herd",
    };

    /// <summary>A word or two for a narrow column: <c>pregnancy test needed</c>.</summary>
    public static string Brief(Missing missing, ListReport list) => missing.Reason switch
    {
        MissingReason.NoResult => $"{missing.Subject}: no result",
        MissingReason.ResultPending => $"{missing.Subject}: result not in",
        MissingReason.ResultTooVague => $"{missing.Subject}: result too vague",
        MissingReason.NotKept => $"{missing.Subject}: records not complete",
        MissingReason.NeverRecorded => $"{missing.Subject}: none on record, not known whether there was one",
        MissingReason.UnreadableRow => $"{missing.Subject}: {PlaceOf(missing, list)} cannot be read",
        MissingReason.FactMissing => $"{missing.Subject}: blank",
        MissingReason.FactUnreadable => $"{missing.Subject}: cannot be read",
        MissingReason.TooFewOfTheMob when missing.Needed > 0 => $"{missing.Subject}: {missing.Needed} more of her mob",
        MissingReason.TooFewOfTheMob => $"{missing.Subject}: too few of her mob",
        MissingReason.MobNotKnown => "mob not known",
        _ => $"{missing.Subject}: others have none",
    };

    /// <summary>The days the record may be dated, with a blank before; empty where any day will do.</summary>
    public static string When(Missing missing, ListReport list) => (missing.From, missing.To) switch
    {
        (null, null) => "",
        ({ } from, null) => $" from {list.Long(from)}",
        (null, { } to) => $" up to {list.Long(to)}",
        ({ } from, { } to) when from == to => $" on {list.Long(from)}",
        ({ } from, { } to) => $" between {list.Long(from)} and {list.Long(to)}",
    };

    private static string Place(Missing missing, ListReport list) => missing.Line > 0 ? $" ({PlaceOf(missing, list)})" : "";

    private static string PlaceOf(Missing missing, ListReport list)
    {
        var file = missing.Reason is MissingReason.FactUnreadable ? list.Herd.AnimalsFile : list.Herd.EventsFile;
        return missing.Line > 0 ? $"{file} line {missing.Line}" : $"a line of {file}";
    }
}
