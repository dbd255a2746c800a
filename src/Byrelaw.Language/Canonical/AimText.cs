namespace Byrelaw.Language.Canonical;

/// <summary>What a programme wants and how it is to be planned, the one way.</summary>
internal static class AimText
{
    /// <summary>The lines, other than its dates; what is as usual is not said.</summary>
    public static IEnumerable<string?> Of(Aims aims) =>
    [
        aims.Wants is { } wants ? $"wants {NumberText.Of(wants.Count)} {Words(wants.What)}, {NumberText.Of(Math.Round(100 * wants.Sure, 10))}% sure" : null,
        aims.Budget is { } budget ? $"budget {PlanText.Of(budget)}" : null,
        .. aims.Shared.OrderBy(one => one.Kind is null ? -1 : (int)one.Kind).Select(Shared),
        aims.Agreement is { } agreement ? RuleText.Reasons(null, null, agreement).OfType<string>().Single() : null,
        Embryos(aims),
        aims.InTheTank == 0 ? null : $"tank holds {NumberText.Of(aims.InTheTank)} frozen {(aims.InTheTank == 1 ? "embryo" : "embryos")}{(aims.TankIsSexed ? " with sexed semen" : "")}",
        aims is { RecipientDayFrom: 6, RecipientDayTo: 8, WithinDaysOfEmbryo: Aims.UsualWithinDays } ? null
            : $"recipients on day {NumberText.Of(aims.RecipientDayFrom)} to {NumberText.Of(aims.RecipientDayTo)}"
                + (aims.WithinDaysOfEmbryo == Aims.UsualWithinDays ? "" : $", within {NumberText.Of(aims.WithinDaysOfEmbryo)} {(aims.WithinDaysOfEmbryo == 1 ? "day" : "days")} of the embryo"),
        .. aims.Recipients.Select(one => $"prepare {(one.Count is { } count ? NumberText.Of(count) + " " : "")}recipients by {NameText.Text(one.Method)}"),
        .. aims.Bookings.Select(one => $"prepare {NameText.Text(one.Animal)} by {NameText.Text(one.Method)} for session {NumberText.Of(one.Session)}"),
        aims.DonorMethod is { } method ? $"prepare donors by {NameText.Text(method)}" : null,
        aims.Semen switch { Semen.SexedFemale => "semen sexed female", Semen.SexedMale => "semen sexed male", _ => null },
        aims.CalfBreeds.IsEmpty ? null : $"calves of breed {string.Join(", ", aims.CalfBreeds.Select(NameText.Exact))}",
        aims.CalveBy is { } day ? $"calve by {NumberText.Of(day)}" : null,
        aims.Region is { } region ? $"region {NameText.Text(region)}" : null,
        .. aims.Holidays.Select(holiday => $"holiday {NumberText.Of(holiday.Date)} {NameText.Text(holiday.Name)}"),
    ];

    /// <summary>The line that says when eggs or embryos are collected; null where none are.</summary>
    public static string? Collection(Programme programme)
    {
        var aims = programme.Aims;
        var times = aims.Repeat is { } repeat ? $", {NumberText.Of(repeat.Times)} times every {repeat.Every}" : "";
        return aims.OnAVisit is { } window ? $"collection on a visit between {NumberText.Of(window.From)} and {NumberText.Of(window.To)}{times}"
            : aims.Collections.IsEmpty ? programme.Date("collection") is { } day ? $"collection on {NumberText.Of(day)}" : null
            : $"collection on {string.Join(", ", (aims.Repeat is null ? aims.Collections : aims.Collections[..1]).Select(NumberText.Of))}{times}";
    }

    private static string Shared(CostsShared shared) => shared.Kind switch { SharedCosts.Semen => "semen costs", SharedCosts.Treatments => "treatment costs", SharedCosts.Transfers => "transfer costs", _ => "costs" }
        + $" shared {string.Join(", ", shared.Shares.Select(one => $"{NameText.Text(one.Who)} {NumberText.Of(Math.Round(100 * one.Share, 10))}%"))}";

    private static string? Embryos(Aims aims) => aims.Embryos switch
    {
        EmbryoOrigin.Flushed => "embryos flushed",
        EmbryoOrigin.Frozen when aims.EmbryoAge != 7 => $"embryos frozen, {NumberText.Of(aims.EmbryoAge)} days old",
        _ => null,
    };

    private static string Words(Outcome what) => what switch
    {
        Outcome.LiveHeiferCalves => "live heifer calves",
        Outcome.LiveCalves => "live calves",
        Outcome.Pregnancies => "pregnancies",
        _ => "embryos transferred",
    };
}
