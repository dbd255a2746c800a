namespace Byrelaw.Records.Embryos;

/// <summary>
/// On which day of its life an embryo has which stage. Stages 4 to 8: Barfield and Demetrio 2023, as the design's sources have it; 9 and the days from memory.
/// </summary>
public static class StageDays
{
    private static readonly (int Stage, int From, int To)[] Usual = [(4, 6, 7), (5, 7, 7), (6, 7, 7), (7, 7, 8), (8, 8, 8), (9, 8, 9)];

    /// <summary>Whether a stage and an age lie within a day of each other; a stage before the fourth says nothing.</summary>
    public static bool Fits(int stage, int age) => Array.Find(Usual, one => one.Stage == stage) is not { Stage: > 0 } days || (age >= days.From - 1 && age <= days.To + 1);
}
