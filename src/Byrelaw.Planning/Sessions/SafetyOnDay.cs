namespace Byrelaw.Planning.Sessions;

/// <summary>
/// Who passes the safety rules of a list and the floor on a day, by the dates of one session. Of one who is begun nothing else is asked any more, for her own hormone
/// would speak against her; and every later day of a method asks them once more.
/// </summary>
public sealed class SafetyOnDay(Rulebook rulebook, Herd herd, LocalDate? knownOn)
{
    private readonly Judge _judge = new(rulebook with { Rules = [.. rulebook.Rules.Where(rule => rule.IsSafety)] }, herd, knownOn);
    private readonly Dictionary<(string List, LocalDate Day), Dictionary<int, Answer>> _asked = [];

    /// <summary>By what a draft is judged by.</summary>
    public SafetyOnDay(Draft draft)
        : this(draft.Rulebook, draft.Herd, draft.KnownOn)
    {
    }

    /// <summary>Whether they surely hold of her; never without a list that has them.</summary>
    public bool Holds(Choice? list, int animal, LocalDate day) => list is not null && Of(list, day).GetValueOrDefault(animal, Answer.No).MayBeUsed();

    private Dictionary<int, Answer> Of(Choice list, LocalDate day)
    {
        if (!_asked.TryGetValue((list.List, day), out var known))
        {
            var (animals, answers) = _judge.Answers(list, day, day);
            known = _asked[(list.List, day)] = animals.Zip(answers).ToDictionary(pair => pair.First, pair => pair.Second);
        }

        return known;
    }
}
