namespace Byrelaw.Planning.Sheets;

/// <summary>
/// What is done on which morning, of all that is still to come: the sheets that a plan would draw up on these days, by what is known now. Nobody stands to be given
/// anything who does not pass both checks on her own days.
/// </summary>
public static class MorningSheets
{
    /// <summary>The sheets, by day, session and work; none where nobody is named by name.</summary>
    public static ImmutableArray<MorningSheet> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Sessions.IsEmpty)
        {
            return [];
        }

        var heads = new SheetHeads(plan);
        return
        [
            .. HormoneMornings.Of(plan, heads).Concat<MorningSheet>(FindingMornings.Of(plan, heads)).Concat(TransferMornings.Of(plan, heads))
                .OrderBy(sheet => sheet.Date).ThenBy(sheet => sheet.Session.Number).ThenBy(sheet => sheet.Work),
        ];
    }
}
