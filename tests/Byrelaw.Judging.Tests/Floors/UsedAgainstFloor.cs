using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Floors;

/// <summary>Everybody whom a case lets through, held to the literal floor.</summary>
internal sealed class UsedAgainstFloor
{
    public UsedAgainstFloor(FloorCase one)
    {
        var rulebook = one.Rulebook;
        var herd = ParityDoubts.Laid(HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), rulebook.Vocabulary, rulebook.Records));
        var (judge, withoutFloor) = (new Judge(rulebook, herd), new Judge(rulebook.WithoutFloor(), herd));
        ReferenceJudge? reference = null;
        foreach (var choice in rulebook.Programme!.Choices.Where(choice => choice.HasFloor).Select(choice => one.On is { } day ? choice with { JudgedFrom = day, JudgedTo = day } : choice))
        {
            var (animals, answers) = judge.Answers(choice, one.On);
            var otherwise = withoutFloor.Answers(choice, one.On).Answers;
            for (var i = 0; i < animals.Length; i++)
            {
                if (answers[i].MayBeUsed())
                {
                    Used++;
                    reference ??= new ReferenceJudge(rulebook, one.Farm, null, one.On);
                    Wrong ??= Unmet(reference, choice, animals[i]) is { } rule ? $"{choice.List}: {herd.Numbers[animals[i]]} is {answers[i]}, and {rule}" : null;
                }
                else
                {
                    HeldByTheFloorAlone += otherwise[i].MayBeUsed() ? 1 : 0;
                }
            }
        }
    }

    /// <summary>How many were let through.</summary>
    public int Used { get; }

    /// <summary>How many nothing else holds back.</summary>
    public int HeldByTheFloorAlone { get; }

    /// <summary>Somebody who may be used though a rule of the floor does not hold; null where there is nobody.</summary>
    public string? Wrong { get; }

    private static string? Unmet(ReferenceJudge reference, Choice choice, int animal)
    {
        foreach (var rule in reference.FloorOf(animal, choice.JudgedFrom, choice.JudgedTo))
        {
            for (var day = rule.Days.First; day <= rule.Days.Last; day++)
            {
                if (rule.Days.On(day).Truth != Truth.True)
                {
                    return $"{rule.Name} is {rule.Days.On(day).Truth} on {DayNumber.Date(day)}";
                }
            }
        }

        return null;
    }
}
