namespace Byrelaw.Judging.Lists;

/// <summary>Which animals stand on a list.</summary>
internal static class Candidates
{
    /// <summary>The animals of a choice, sorted, and the numbers named that are not in the records.</summary>
    /// <param name="plan">The list's gates.</param>
    /// <param name="choice">What the programme asks for.</param>
    /// <param name="days">The judging days.</param>
    /// <param name="ofOtherList">The animals of a list by its name, for a choice from another list.</param>
    public static (int[] Animals, List<string> Unknown) Find(ListPlan plan, Choice choice, JudgingDays days, Func<string, int[]> ofOtherList)
    {
        var herd = plan.Days.Herd;
        var unknown = new List<string>();
        switch (choice.From)
        {
            case ChoiceFrom.AnotherList:
                return (ofOtherList(choice.OtherList!), unknown);
            case ChoiceFrom.Named:
                var named = new SortedSet<int>();
                foreach (var number in choice.Animals)
                {
                    if (herd.Find(number) is var animal and >= 0)
                    {
                        named.Add(animal);
                    }
                    else
                    {
                        unknown.Add(number);
                    }
                }

                return ([.. named], unknown);
            default:
                var present = new List<int>(herd.Count);
                for (var animal = 0; animal < herd.Count; animal++)
                {
                    if (!Gates(plan, animal, days).IsFalse)
                    {
                        present.Add(animal);
                    }
                }

                return ([.. present], unknown);
        }
    }

    /// <summary>Whether a list may take an animal, going by what the programme says alone: not whether she is in the herd or of the right sort.</summary>
    public static bool MayTake(Choice choice, string number, Programme programme) => choice.From switch
    {
        ChoiceFrom.Named => choice.Animals.Contains(number),
        ChoiceFrom.AnotherList => programme.Choices.Where(other => other.List == choice.OtherList).Any(other => MayTake(other, number, programme)),
        _ => true,
    };

    private static Kleene Gates(ListPlan plan, int animal, JudgingDays days)
    {
        var all = Kleene.True;
        for (var day = days.First; day <= days.Last && !all.IsFalse;)
        {
            var until = int.MaxValue;
            all &= plan.Presence.On(animal, day, ref until, null);
            if (!all.IsFalse)
            {
                all &= plan.Sort.On(animal, day, ref until, null);
            }

            day = until >= days.Last ? days.Last + 1 : Math.Max(until, day) + 1;
        }

        return all;
    }
}
