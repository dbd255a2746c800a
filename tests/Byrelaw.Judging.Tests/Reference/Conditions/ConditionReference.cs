namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What any condition answers for one animal on one day.</summary>
public static class ConditionReference
{
    public static Truth At(Condition condition, Knowledge knowledge, Moment moment) => condition switch
    {
        CountCondition count => CountReference.At(count, knowledge, moment),
        ApartCondition apart => ApartReference.At(apart, knowledge, moment),
        TimeSinceCondition since => TimeSinceReference.At(since, knowledge, moment),
        AgeCondition age => AgeReference.At(age, knowledge, moment),
        ParityCondition parity => ParityReference.At(parity, knowledge, moment),
        FactNumberCondition or FactTextCondition or FactDateCondition or RecordedCondition => FactReference.At(condition, knowledge, moment),
        MeasuredCondition measured => MeasuredReference.At(measured, knowledge, moment),
        TestCondition test => TestReference.At(test, knowledge, moment),
        SeriesCondition series => SeriesReference.At(series, knowledge, moment),
        MobMeasuredCondition or MobCountCondition => MobReference.At(condition, knowledge, moment),
        SpellCondition spell => SpellWindowReference.At(spell, knowledge, moment),
        InMobCondition mob => InMobReference.At(mob, knowledge, moment),
        StandingCondition standing => StandingReference.At(standing, knowledge, moment),
        NamedCondition named => NamedReference.At(named, knowledge, moment),
        ListCondition list => ListReference.At(list, knowledge, moment),
        BrokenCondition => Truth.Unknown,
        _ => throw new ArgumentOutOfRangeException(nameof(condition)),
    };
}
