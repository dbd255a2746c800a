namespace Byrelaw.Planning.Sheets;

/// <summary>Whom the floor holds back on one day, by number: it alone says so, whatever the lists say of them.</summary>
/// <param name="Take">Whom to take as in calf: a rule of it is false.</param>
/// <param name="MayBe">Who may be: one is not known.</param>
public sealed record InCalfOnDay(ImmutableArray<string> Take, ImmutableArray<string> MayBe)
{
    /// <summary>Asks it of every animal of the list for treatment, or where there is none of the recipients' list.</summary>
    public static InCalfOnDay Of(JudgedSession session, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(session);
        if ((ProgrammeLists.Treatment(session.Programme) ?? ProgrammeLists.Recipients(session.Programme)) is not { } list)
        {
            return new([], []);
        }

        return Of(session.Judge, list, day);
    }

    /// <summary>Asks it of every animal of a list.</summary>
    public static InCalfOnDay Of(Judge judge, Choice list, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(judge);
        var (animals, said) = judge.InCalfOn(list, day);
        return Of(judge.Herd, animals, said);
    }

    /// <summary>By number, of what the floor said of some animals.</summary>
    private static InCalfOnDay Of(Herd herd, int[] animals, InCalf[] said)
    {
        return new(Those(InCalf.TakeAsInCalf), Those(InCalf.MayBe));

        ImmutableArray<string> Those(InCalf which) =>
            [.. animals.Where((_, i) => said[i] == which).Select(animal => herd.Numbers[animal]).Order(AnimalNumberOrder.Instance)];
    }
}
