namespace Byrelaw.Planning.Visiting;

/// <summary>One visit on which the first collection could be.</summary>
/// <param name="Rulebook">The rulebook with its programme moved to that visit.</param>
/// <param name="Collection">The day.</param>
/// <param name="Donors">Donors that are Ready or On course on it.</param>
/// <param name="Recipients">Recipients that are Ready or On course on the transfer days, and at the first treatment where there is a list for it.</param>
/// <param name="FirstTreatment">The first day of treatment of the method liked best; null where none treats.</param>
/// <param name="Calving">When its calves come, and whether that is too late.</param>
/// <param name="Clashes">Days of collection and transfer that go badly with weekends, holidays and visits.</param>
/// <param name="TasksPast">Tasks whose last day has passed.</param>
/// <param name="Outlook">What comes of it; null where that cannot be told.</param>
/// <param name="Obstacles">Why it cannot be used; empty where it can.</param>
public sealed record VisitOption(
    Rulebook Rulebook, LocalDate Collection, Usable Donors, Usable Recipients, LocalDate? FirstTreatment, CalvingSeason Calving,
    ImmutableArray<Clash> Clashes, ImmutableArray<string> TasksPast, Outlook? Outlook, ImmutableArray<Obstacle> Obstacles);

/// <summary>How many of a list may be used.</summary>
/// <param name="Ready">By the records as they are.</param>
/// <param name="OnCourse">If nothing happens until then.</param>
/// <param name="Asked">If what is not known turns out well.</param>
/// <param name="Judged">How many were judged.</param>
public sealed record Usable(int Ready, int OnCourse, int Asked, int Judged)
{
    /// <summary>Ready and On course.</summary>
    public int Count => Ready + OnCourse;

    /// <summary>Those asked about among them: a plan is made early enough to find out.</summary>
    public int AtMost => Count + Asked;

    /// <summary>Counts a list; nobody where there is none.</summary>
    internal static Usable Of(ListStanding? list) => list is null
        ? new(0, 0, 0, 0)
        : new(list.Count(Answer.Ready), list.Count(Answer.OnCourse), list.Count(Answer.Ask), list.Animals.Length);
}

/// <summary>What comes of a programme on certain days.</summary>
/// <param name="Wanted">How many of what is wanted to expect.</param>
/// <param name="Chance">The chance of reaching what is wanted; null where nothing is.</param>
/// <param name="Cost">What it costs; null where no price is known.</param>
/// <param name="IsAtLeast">Whether something that is done has no price: then it costs at least so much, and no visit is liked better for its money.</param>
public sealed record Outlook(double Wanted, double? Chance, Money? Cost, bool IsAtLeast = false)
{
    /// <summary>By the season's numbers; null where the programme's assumptions do not go far enough.</summary>
    internal static Outlook? Of(SeasonInputs inputs)
    {
        if (SeasonPlanner.Outlook(inputs) is not { } season)
        {
            return null;
        }

        var goal = season.Forecast.Chain.Goal;
        return new(
            goal is null ? season.Forecast.Stages[^1].Counts.Mean : season.Forecast.At(goal.Of).Mean, season.Forecast.Chance,
            season.Lines.IsEmpty ? null : new Money(season.Cost, Charges.Currency(inputs)), season.IsAtLeast);
    }
}

/// <summary>Why a visit cannot be used.</summary>
public enum Obstacle
{
    /// <summary>Its treatments would have had to start already, and no method that may be used can still start.</summary>
    TreatmentPast,

    /// <summary>Its calves come after the last acceptable day.</summary>
    TooLate,

    /// <summary>No donor may be used.</summary>
    NoDonor,

    /// <summary>No recipient may be used.</summary>
    NoRecipient,
}
