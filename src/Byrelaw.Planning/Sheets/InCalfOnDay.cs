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

        var (animals, said) = session.Judge.InCalfOn(list, day);
        return Of(session.Judge.Herd, animals, said);
    }

    /// <summary>By number, of what the floor said of some animals.</summary>
    internal static InCalfOnDay Of(Herd herd, int[] animals, InCalf[] said)
    {
        return new(Those(InCalf.TakeAsInCalf), Those(InCalf.MayBe));

        ImmutableArray<string> Those(InCalf which) =>
            [.. animals.Where((_, i) => said[i] == which).Select(animal => herd.Numbers[animal]).Order(AnimalNumberOrder.Instance)];
    }
}
