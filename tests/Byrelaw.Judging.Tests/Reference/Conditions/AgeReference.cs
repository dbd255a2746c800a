namespace Byrelaw.Judging.Tests.Reference;

/// <summary>"<c>age</c> (from <c>born</c>, which may be a year or a year and month: then an answer holds only if it holds for every possible day)."</summary>
public static class AgeReference
{
    public static Truth At(AgeCondition condition, Knowledge knowledge, Moment moment)
    {
        var animal = knowledge.Farm.Animals[moment.Animal];
        return animal is { BornFirst: { } day } && animal.BornLast == day ? Kleene.Of(Comparing.Elapsed(condition.Test, day, moment.Day))
            : animal is { BornFirst: { } first, BornLast: { } last }
            ? Kleene.SameForAll(Enumerable.Range(first, last - first + 1).Select(born => Kleene.Of(Comparing.Elapsed(condition.Test, born, moment.Day))))
            : Truth.Unknown;
    }
}
