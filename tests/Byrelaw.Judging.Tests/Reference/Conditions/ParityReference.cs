namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Recorded in the column, else the number of calvings up to d where calving is covered from birth, else at least that
/// many. Recorded and counted that disagree (counted more than recorded): the range between them."
/// </summary>
public static class ParityReference
{
    public static Truth At(ParityCondition condition, Knowledge knowledge, Moment moment)
    {
        var (atLeast, atMost) = Between(knowledge, moment);
        return Comparing.Count(condition.Test, (int)atLeast!.Value, (int?)atMost);
    }

    /// <summary>The least and the most that it may be; no most where there may be any number.</summary>
    public static ValueRange Between(Knowledge knowledge, Moment moment)
    {
        var animal = knowledge.Farm.Animals[moment.Animal];
        var counted = Calvings.Counted(knowledge, moment);
        var (atLeast, atMost) = animal switch
        {
            { ParityUnreadable: true } => (0, (int?)null),
            // A row that may be a calving may be one more than was counted.
            { Parity: { } recorded } => (recorded, Calvings.MayBeUnread(knowledge, moment) ? null : Math.Max(recorded, counted)),
            _ => (counted, Calvings.CoveredFromBirth(knowledge, moment) ? counted : null),
        };
        return new ValueRange(atLeast, atMost);
    }
}
