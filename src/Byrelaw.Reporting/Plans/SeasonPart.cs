namespace Byrelaw.Reporting.Plans;

/// <summary>When calves come, and whether that is in season.</summary>
internal static class SeasonPart
{
    public static Part Of(Plan plan)
    {
        var season = plan.Calendar.Season;
        var table = new Table("When calves are due", "transfer", "due in cows", "due in heifers", "nineteen in twenty between", "in season");
        foreach (var round in season.Rounds.Where(round => round.InCows is not null))
        {
            var (cows, heifers) = (round.InCows!, round.InHeifers);
            table.Add(
                Dates.Range(round.Round.FirstTransfer, round.Round.FinalTransfer), Wording.Bold(Dates.Range(cows.From, cows.To)),
                heifers is null ? "" : Dates.Range(heifers.From, heifers.To), Dates.Range(cows.Earliest, cows.Latest), InSeason(round));
        }

        return table.IsEmpty ? Part.None : new DocumentBuilder().Heading(2, "Calving and the season")
            .Table(table)
            .Bullets(Notes(season))
            .As("season");
    }

    private static string InSeason(RoundInSeason round) => round switch
    {
        { IsTooLate: true } => $"TOO LATE by {Numbers.Count(round.DaysTooLate!.Value, "day", "days")}; the last transfer in time is {Dates.Long(round.LastTransferInTime!.Value)}",
        { LastTransferInTime: { } last } => $"yes; the last transfer in time is {Dates.Long(last)}",
        _ => "no last day is set",
    };

    private static IEnumerable<string> Notes(Season season)
    {
        if (season.CalveBy is { } by)
        {
            yield return $"The last acceptable day of calving is {Dates.Long(by)}.";
        }

        if (season.Rounds is [{ DaysFromStartOfMating: { } days }, ..] && season.PlannedStartOfMating is { } start)
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
