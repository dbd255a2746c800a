namespace Byrelaw.Reporting.Plans;

/// <summary>When calves come, and whether that is in season.</summary>
internal static class SeasonPart
{
    public static Part Of(Plan plan)
    {
        var season = plan.Calendar.Calving;
        var table = new Table("When calves are due", "transfer", "due in cows", "due in heifers", "nineteen in twenty between", "in season");
        foreach (var session in season.Sessions.Where(session => session.InCows is not null))
        {
            var (cows, heifers) = (session.InCows!, session.InHeifers);
            table.Add(
                Dates.Range(session.Session.FirstTransfer, session.Session.FinalTransfer), Wording.Bold(Dates.Range(cows.From, cows.To)),
                heifers is null ? "" : Dates.Range(heifers.From, heifers.To), Dates.Range(cows.Earliest, cows.Latest), InSeason(session));
        }

        return table.IsEmpty ? Part.None : new DocumentBuilder().Heading(2, "Calving and the season")
            .Table(table)
            .Bullets(Notes(season))
            .As("season");
    }

    private static string InSeason(SessionCalving session) => session switch
    {
        { IsTooLate: true } => $"TOO LATE by {Numbers.Count(session.DaysTooLate!.Value, "day", "days")}; the last transfer in time is {Dates.Long(session.LastTransferInTime!.Value)}",
        { LastTransferInTime: { } last } => $"yes; the last transfer in time is {Dates.Long(last)}",
        _ => "no last day is set",
    };

    private static IEnumerable<string> Notes(CalvingSeason season)
    {
        if (season.CalveBy is { } by)
        {
            yield return $"The last acceptable day of calving is {Dates.Long(by)}.";
        }

        if (season.Sessions is [{ DaysFromStartOfMating: { } days }, ..] && season.PlannedStartOfMating is { } start)
        {
            yield return $"Mating starts on {Dates.Long(start)}: the first embryos calve about {(days == 0 ? "with its first calves" : $"{Numbers.Count(Math.Abs(days), "day", "days")} {(days < 0 ? "before" : "after")} its first calves")}.";
        }

        if (season.LostCycle is { } lost)
        {
            yield return $"A recipient that does not hold comes on heat again about {Dates.Long(lost.NextHeat)}, and a lost cycle is {Numbers.Count(lost.Days, "day", "days")}"
                + (lost.Money is { } money ? $" and about {MoneyWords.Of(money)}" : "")
                + (lost.DueThen is { } due ? $"; served then, she calves about {Dates.Long(due)}{(lost.IsTooLateThen ? ", which is too late for this season" : "")}." : ".");
        }
    }
}
