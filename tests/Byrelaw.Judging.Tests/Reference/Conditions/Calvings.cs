namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What is on record of her calvings.</summary>
public static class Calvings
{
    /// <summary>Days up to d with a calving.</summary>
    public static int Counted(Knowledge knowledge, Moment moment) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving
            ? knowledge.Farm.Of(moment.Animal, calving).Where(row => row.Day <= moment.Day).Select(row => row.Day).Distinct().Count()
            : 0;

    /// <summary>Nothing is missing from birth to d.</summary>
    public static bool CoveredFromBirth(Knowledge knowledge, Moment moment) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving
        && knowledge.Coverage.Covers(
            moment.Animal, calving, knowledge.Farm.Animals[moment.Animal].BornFirst ?? knowledge.Coverage.Dawn, moment.Day, moment.Strict);

    /// <summary>A row that could not be read may be a calving up to d.</summary>
    public static bool MayBeUnread(Knowledge knowledge, Moment moment) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving
        && knowledge.Farm.Unread.Any(row => row.MayBeOf(knowledge.Farm.Animals[moment.Animal]) && row.MayBeA(calving) && row.MayBeIn(CoverageReference.NeededFrom(knowledge.Farm.Animals[moment.Animal], calving), moment.Day));
}
