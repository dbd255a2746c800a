namespace Byrelaw.Records.Doubts;

/// <summary>Two animals with one official number, blanks in it left out of account.</summary>
internal static class SameIdentity
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        foreach (var fact in herd.Vocabulary.Facts.Where(fact => fact.Type == FactType.Identity))
        {
            var first = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
            var column = herd.Facts[fact.Id];
            foreach (var animal in Enumerable.Range(0, herd.Count).Where(animal => column.States[animal] == FactState.Known))
            {
                var identity = column.Texts[animal]!.Replace(" ", "", StringComparison.Ordinal);
                if (!first.TryAdd(identity, animal))
                {
                    var other = first[identity];
                    yield return new Doubt(
                        "R0207", herd.AnimalLines[animal], DoubtfulCell.RowOfAnimals,
                        $"{herd.Numbers[animal]} has the {fact.Name} of {herd.Numbers[other]} (line {herd.AnimalLines[other]})",
                        "expected each official number once", "read both tags again");
                }
            }
        }
    }
}
