namespace Byrelaw.Judging.Spells;

/// <summary>What is on record of one mob, or one animal, on one day.</summary>
/// <param name="Starts">How many rows put a bull in.</param>
/// <param name="End">Whether a row takes one out.</param>
/// <param name="IsHerdsEnd">Whether that row is the herd's.</param>
internal readonly record struct CompanyRows(int Starts, bool End, bool IsHerdsEnd)
{
    /// <summary>Of one mob, among rows of one or several days.</summary>
    /// <param name="rows">By day.</param>
    /// <param name="spell">Which spell.</param>
    /// <param name="mob">Which mob; the herd's rows are of every one.</param>
    /// <param name="day">When.</param>
    /// <param name="line">Set to the line of the last that puts a bull in.</param>
    public static CompanyRows Of(ReadOnlySpan<MobRow> rows, Spell spell, int mob, int day, ref int line)
    {
        var (starts, end, isHerdsEnd) = (0, false, false);
        foreach (ref readonly var row in rows)
        {
            if (row.Day != day || (row.Mob != mob && row.Mob != MobStays.NotKnown))
            {
                continue;
            }

            if (row.Kind == spell.From.Id)
            {
                starts++;
                line = row.Line;
            }
            else if (row.Kind == spell.Until.Id)
            {
                end = true;
                isHerdsEnd |= row.Mob == MobStays.NotKnown;
            }
        }

        return new CompanyRows(starts, end, isHerdsEnd);
    }
}
