namespace Byrelaw.Records.Doubts;

/// <summary>Something that happens to females only, recorded of a male.</summary>
internal static class NotForMales
{
    private static readonly string[] Names =
        ["calving", "abortion", "heat", "mating", "transfer", "pregnancy test", "retained membranes", "metritis", "egg collection"];

    public static IEnumerable<Doubt> Find(Herd herd, IReadOnlySet<int> linesOfGroups)
    {
        foreach (var kind in Names.Select(herd.Vocabulary.FindKind).OfType<Language.Rulebooks.Words.Kind>().Distinct())
        {
            foreach (var (animal, run) in Entries.Animals(herd, kind).Where(entry => herd.Sexes[entry.Animal] == Sex.Male))
            {
                foreach (var i in Entries.Of(run, animal).Where(i => !linesOfGroups.Contains(run.Lines[i])))
                {
                    yield return new Doubt(
                        "R0204", run.Lines[i], DoubtfulCell.Kind,
                        $"{kind.Name} of {herd.Numbers[animal]}, who is recorded as male", "expected a female",
                        "check the number here, and the sex in animals.csv");
                }
            }
        }
    }
}
