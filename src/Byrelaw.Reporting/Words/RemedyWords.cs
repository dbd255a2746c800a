namespace Byrelaw.Reporting.Words;

/// <summary>What would turn a condition that is not met.</summary>
public static class RemedyWords
{
    /// <summary>Such as <c>a new result of body condition</c>, <c>time: from 2 November</c>, <c>nothing any more</c>.</summary>
    public static string Of(Remedy remedy, ListReport list) => remedy.Kind switch
    {
        RemedyKind.Time => remedy.Date is { } date ? $"time: from {list.Long(date)}" : "time",
        RemedyKind.NewEvent when remedy.Subjects is [var only] && only == list.Herd.Vocabulary.MobMove.Name => "a move to another mob on record",
        RemedyKind.NewEvent => $"a new {Phrases.Or(remedy.Subjects)} on record",
        RemedyKind.NewResult when remedy.Subjects is [var only] && list.Herd.Vocabulary.Filtered.FirstOrDefault(kind => kind.Name == only) is { } filtered => $"a new {ResultWords.Of(filtered)}",
        RemedyKind.NewResult => $"a new result of {Phrases.Or(remedy.Subjects)}",
        _ => "nothing any more",
    };
}
