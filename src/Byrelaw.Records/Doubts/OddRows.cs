namespace Byrelaw.Records.Doubts;

/// <summary>Rows that are odd in themselves, as reading met them.</summary>
internal static class OddRows
{
    public static IEnumerable<Doubt> Find(EventStage stage)
    {
        foreach (var line in stage.EnteredEarly)
        {
            yield return new Doubt("R0208", line, DoubtfulCell.Recorded, "entered before the day it is about", "expected that day or a later one", "check both dates");
        }

        foreach (var line in stage.NobodysResults)
        {
            yield return new Doubt(
                "R0211", line, DoubtfulCell.Animal, "a result that no animal has and no rule can use",
                "expected the number of an animal, or `mob:` and a mob's name for a measure",
                "write a row for each animal that was sampled");
        }
    }
}
