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
                "R0211", line, DoubtfulCell.Animal, "a result of a mob or the herd, which proves nothing of any one animal",
                "expected the number of an animal",
                "write a row for each animal that was sampled: until then it holds back whom it may be bad news of");
        }
    }
}
