namespace Byrelaw.Judging.Passing;

/// <summary>Of a condition on a fact: a value that the file of the condition does not know is there, and nobody said what it means.</summary>
internal sealed class ValueBar(HerdDays days, FactTextCondition condition, Bar own) : Bar
{
    public override bool May(int animal) => own.May(animal) || IsDoubted(animal);

    public override bool Is(int animal, int day) => own.Is(animal, day) || IsDoubted(animal);

    private bool IsDoubted(int animal) => days.Herd.Facts[condition.Fact.Id].Texts[animal] is { } text && condition.Doubts(text);
}
