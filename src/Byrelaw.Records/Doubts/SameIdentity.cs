namespace Byrelaw.Records.Doubts;

/// <summary>Two animals that may be one: with one official identity, or with numbers that a hand may have written for each other.</summary>
internal static class SameIdentity
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        foreach (var (first, second, why) in herd.Doubted.OfType<TwoNumbers>().SelectMany(doubt => doubt.Pairs).Where(pair => pair.Why != Likeness.Said))
        {
            var (one, other) = (herd.Numbers[first], herd.Numbers[second]);
            var settle = $"read both tags again, and write `same animal \"{one}\", \"{other}\"` or `not the same animal \"{one}\", \"{other}\"` under `records`";
            yield return why == Likeness.Identity
                ? new Doubt(
                    "R0207", herd.AnimalLines[second], DoubtfulCell.RowOfAnimals,
                    $"{other} has the official identity of {one} (line {herd.AnimalLines[first]})", "expected each official identity once", settle)
                : new Doubt(
                    "R0212", herd.AnimalLines[second], DoubtfulCell.RowOfAnimals,
                    $"{other} looks like {one} (line {herd.AnimalLines[first]})", "expected numbers that differ in more than zeros in front, spaces, width or capitals", settle);
        }
    }
}
