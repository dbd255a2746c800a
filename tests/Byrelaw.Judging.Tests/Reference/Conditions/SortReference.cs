namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A cow is a female with a calving, or a parity surely above 0; a heifer a female whose parity is surely 0; otherwise both are not
/// known."
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

    /// <summary>"Surely above 0 is a cow, surely 0 a heifer"; a calving on record makes a cow whatever the column says.</summary>
    private static Truth HasCalved(Knowledge knowledge, Moment moment)
    {
        var (least, most) = ParityReference.Between(knowledge, moment);
        return least > 0 || Calvings.Sure(knowledge, moment.Animal, moment.Day) > 0 ? Truth.True : most == 0 ? Truth.False : Truth.Unknown;
    }
}
