namespace Byrelaw.Judging.Tests.Reference;

/// <summary>"<c>prefer</c> ranks those who may be used ...; ties by animal number."</summary>
public static class RankReference
{
    /// <summary>Her place, from 1; null for one who may not be used.</summary>
    public static int? Of(JudgedAnimal animal, IEnumerable<JudgedAnimal> list)
    {
        var ranked = list.Where(MayBeUsed).OrderByDescending(one => one.Score).ThenBy(one => one.Number, AnimalNumberOrder.Instance).ToList();
        return MayBeUsed(animal) ? ranked.IndexOf(animal) + 1 : null;
    }

    private static bool MayBeUsed(JudgedAnimal animal) => animal.Answer.Answer is Answer.Ready or Answer.OnCourse;
}
