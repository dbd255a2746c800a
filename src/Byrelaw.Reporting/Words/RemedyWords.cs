namespace Byrelaw.Reporting.Words;

/// <summary>What would turn a condition that is not met.</summary>
public static class RemedyWords
{
    /// <summary>Such as <c>a new result of body condition</c>, <c>time: from 2 November</c>, <c>nothing any more</c>.</summary>
    public static string Of(Remedy remedy, ListReport list) => remedy.Kind switch
    {
        RemedyKind.Time => remedy.Date is { } date ? $"time: from {list.Long(date)}" : "time",
        RemedyKind.NewEvent when remedy.Subjects is [var only] && only == list.Herd.Vocabulary.MobMove.Name => "a move to another mob on record",
        RemedyKind.NewEvent => $"a new {Phrases.Or(OfOnesOwn(remedy.Subjects, list))} on record",
        RemedyKind.NewResult when remedy.Subjects is [var only] && list.Herd.Vocabulary.FindFact(only) is not null => $"her {only} on record",
        RemedyKind.NewResult when remedy.Subjects is [var only] && list.Herd.Vocabulary.Filtered.FirstOrDefault(kind => kind.Name == only) is { } filtered => $"a new {ResultWords.Of(filtered)}",
        RemedyKind.NewResult => $"a new result of {Phrases.Or(remedy.Subjects)}",
        _ => "nothing any more",
    };

    /// <summary>Nobody buys a cow that is here; she may come back, but that is no advice.</summary>
    private static ImmutableArray<string> OfOnesOwn(ImmutableArray<string> subjects, ListReport list)
    {
        var own = subjects.RemoveAll(subject => list.Herd.Vocabulary.FindKind(subject)?.Declaration is EventKind { Effect: HerdEffect.Joins });
        return own.IsEmpty ? subjects : own;
    }
}
