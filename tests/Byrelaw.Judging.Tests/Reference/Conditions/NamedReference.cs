namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A defined name, and <c>not</c> before it.</summary>
public static class NamedReference
{
    public static Truth At(NamedCondition named, Knowledge knowledge, Moment moment)
    {
        if (!knowledge.Named.TryGetValue((named.Index, moment), out var truth))
        {
            var define = knowledge.Rulebook.Defines[named.Index];
            truth = define.IsBroken ? Truth.Unknown : ConditionReference.At(define.Condition, knowledge, moment);
            knowledge.Named[(named.Index, moment)] = truth;
        }

        return named.Not ? Kleene.Not(truth) : truth;
    }
}
