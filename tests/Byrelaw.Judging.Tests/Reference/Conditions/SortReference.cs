namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A cow is a female with a calving or a recorded parity above 0; a heifer a female for whom calving never happened, or
/// with recorded parity 0; otherwise both are not known."
/// </summary>
public static class SortReference
{
    public static Truth Female(Knowledge knowledge, Moment moment) =>
        knowledge.Farm.Animals[moment.Animal].IsFemale is { } female ? Kleene.Of(female) : Truth.Unknown;

    public static Truth Cow(Knowledge knowledge, Moment moment) => Kleene.And(Female(knowledge, moment), HasCalved(knowledge, moment));

    public static Truth Heifer(Knowledge knowledge, Moment moment) => Kleene.And(Female(knowledge, moment), Kleene.Not(HasCalved(knowledge, moment)));

    /// <summary>The one sort that she surely is; else not known, and of which sex not known either where that is blank.</summary>
    public static AnimalSort Of(Knowledge knowledge, Moment moment) => (Female(knowledge, moment), Cow(knowledge, moment), Heifer(knowledge, moment)) switch
    {
        (Truth.False, _, _) => AnimalSort.Male,
        (_, Truth.True, _) => AnimalSort.Cow,
        (_, _, Truth.True) => AnimalSort.Heifer,
        (Truth.Unknown, _, _) => AnimalSort.SexNotKnown,
        _ => AnimalSort.NotKnown,
    };

    private static Truth HasCalved(Knowledge knowledge, Moment moment)
    {
        var animal = knowledge.Farm.Animals[moment.Animal];
        var parity = animal.Parity;
        if (Calvings.Counted(knowledge, moment) > 0 || parity > 0)
        {
            return Truth.True;
        }

        // A recorded parity of 0 does not outweigh a row that may be a calving.
        // One that could not be read may be above 0.
        var never = (Calvings.CoveredFromBirth(knowledge, moment) && !animal.ParityUnreadable) || (parity == 0 && !Calvings.MayBeUnread(knowledge, moment));
        return never ? Truth.False : Truth.Unknown;
    }
}
