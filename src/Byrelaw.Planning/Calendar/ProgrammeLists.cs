namespace Byrelaw.Planning.Calendar;

/// <summary>Which of a programme's lists is which, by the date it is judged on.</summary>
public static class ProgrammeLists
{
    /// <summary>The donors: judged on the day of collection; null for none.</summary>
    public static Choice? Donors(Programme programme) => On(programme, "collection") ?? Named(programme, "donors");

    /// <summary>Those to treat: judged on the first treatment day; null for none.</summary>
    public static Choice? Treatment(Programme programme) => On(programme, "first treatment") ?? Named(programme, "treatment");

    /// <summary>The recipients: judged on the transfer days; null for none.</summary>
    public static Choice? Recipients(Programme programme) => On(programme, "first transfer") ?? Named(programme, "recipients");

    /// <summary>A list as it was judged; null where the programme does not draw it up.</summary>
    public static ListJudgement? Judged(ImmutableArray<ListJudgement> lists, Choice? choice) =>
        choice is null ? null : lists.FirstOrDefault(list => list.Choice.List == choice.List);

    private static Choice? On(Programme programme, string date)
    {
        ArgumentNullException.ThrowIfNull(programme);
        return programme.Choices.FirstOrDefault(choice => choice.FromDate == date && choice.Use != ListUse.ForLookingOnly);
    }

    private static Choice? Named(Programme programme, string list) => programme.Choices.FirstOrDefault(choice => NameFolding.Fold(choice.List) == list && choice.Use != ListUse.ForLookingOnly);
}
