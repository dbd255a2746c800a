using Byrelaw.Records.Embryos;

namespace Byrelaw.Planning.Pairing;

/// <summary>What must hold of an embryo and its recipient before they may be paired. What is not known does not hold.</summary>
/// <param name="Name">What is asked, in plain words.</param>
/// <param name="Column">The column of <c>embryos.csv</c> that settles it.</param>
/// <param name="IsOfEmbryo">Whether it asks nothing of the recipient.</param>
public sealed record PairRule(string Name, string Column, bool IsOfEmbryo)
{
    private const int PoorestGrade = 3;
    private const int FirstStage = 4;
    private const int LastStage = 9;
    private const int OldestFresh = 8;

    /// <summary>
    /// What is common: grades 1 to 3 and stages 4 to 9 (codes of the International Embryo Technology Society, from memory), fresh embryos of 8 days at most, an embryo about as old as her day by its age and by its
    /// stage (stage against day: Lindner and Wright 1983; the days from memory).
    /// </summary>
    public static readonly ImmutableArray<PairRule> Common =
    [
        new("grade at most 3", "grade", true) { Asked = (embryo, _, _) => AtMost(embryo.Embryo.Grade, PoorestGrade) },
        new("stage 4 to 9", "stage", true) { Asked = (embryo, _, _) => embryo.Embryo.Stage is { } stage ? Is(stage is >= FirstStage and <= LastStage) : Truth.Unknown },
        new("fresh at most 8 days old", "collected", true) { Asked = (embryo, _, _) => embryo.IsFresh ? AtMost(embryo.Age, OldestFresh) : Truth.True },
        new("about as old as her day", "collected", false) { Asked = (embryo, day, within) => embryo.Age is { } age ? Is(Math.Abs(age - day) <= within) : Truth.Unknown },
        new("its stage is that of her day, a day more or less", "stage", false) { Asked = (embryo, day, _) => embryo.Embryo.Stage is { } stage ? Is(StageDays.Fits(stage, day)) : Truth.Unknown },
    ];

    private Func<EmbryoToday, int, int, Truth> Asked { get; init; } = (_, _, _) => Truth.Unknown;

    /// <summary>What it says.</summary>
    /// <param name="embryo">The embryo.</param>
    /// <param name="day">The recipient's day; of no matter to a rule of the embryo alone.</param>
    /// <param name="within">How many days the two may lie apart.</param>
    public Truth Of(EmbryoToday embryo, int day, int within)
    {
        ArgumentNullException.ThrowIfNull(embryo);
        return Asked(embryo, day, within);
    }

    private static Truth AtMost(int? value, int most) => value is { } known ? Is(known <= most) : Truth.Unknown;

    private static Truth Is(bool said) => said ? Truth.True : Truth.False;
}
