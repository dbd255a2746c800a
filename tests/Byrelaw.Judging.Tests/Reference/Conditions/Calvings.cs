namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What is on record of her calvings.</summary>
public static class Calvings
{
    /// <summary>Days up to one with a calving.</summary>
    public static int Sure(Knowledge knowledge, int animal, int day) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving
            ? knowledge.Farm.Of(animal, calving).Where(row => row.Day <= day).Select(row => row.Day).Distinct().Count()
            : 0;

    /// <summary>Whether she cannot have calved yet.</summary>
    public static bool IsTooYoung(Knowledge knowledge, int animal, int day) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving && day < CoverageReference.NeededFrom(knowledge.Farm.Animals[animal], calving);

    /// <summary>Nothing is missing from one day to another.</summary>
    public static bool Covered(Knowledge knowledge, Moment moment, int from, int to) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving && knowledge.Coverage.Covers(moment.Animal, calving, from, to, moment.Strict);

    /// <summary>A row that could not be read may be a calving up to d.</summary>
    public static bool MayBeUnread(Knowledge knowledge, Moment moment) =>
        knowledge.Rulebook.Vocabulary.Calving is { } calving
        && knowledge.Farm.Unread.Any(row => row.MayBeOf(knowledge.Farm.Animals[moment.Animal]) && row.MayBeA(calving) && row.MayBeIn(row.IsOnRecord ? int.MinValue : CoverageReference.NeededFrom(knowledge.Farm.Animals[moment.Animal], calving), moment.Day));
}
