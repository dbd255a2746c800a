namespace Byrelaw.Reporting.Explaining;

/// <summary>What is doubted about the records and touches one animal.</summary>
public static class DoubtsAboutHer
{
    /// <summary>Sentences: contradictions in her own records, then promises set aside that her answer waits for.</summary>
    public static IReadOnlyList<string> Of(AnimalReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var (herd, animal) = (report.On.Herd, report.Animal);
        var sentences = new List<string>();
        foreach (var contradictions in herd.Doubted.OfType<Contradictions>())
        {
            ImmutableArray<Unexpected> hers = [.. contradictions.Entries.Where(entry => entry.Animal == animal.Animal)];
            if (hers.Length > 0)
            {
                var said = DoubtWords.Of(contradictions with { Entries = hers }, herd);
                sentences.Add($"{said.Lead}. {said.Effect} {said.Settle}");
            }
        }

        foreach (var high in herd.Doubted.OfType<ParityTooHigh>().Where(high => high.Animals.Contains(animal.Animal)))
        {
            var said = DoubtWords.Of(high with { Animals = [animal.Animal] }, herd);
            sentences.Add($"{said.Lead}. {said.Effect} {said.Settle}");
        }

        foreach (var said in DoubtWords.Of(herd).Where(said => Awaits(animal, said, herd)))
        {
            sentences.Add($"{said.Effect} See “What is doubted” on the list’s page.");
        }

        return sentences;
    }

    /// <summary>The numbers of those on a list whose answer waits for a doubt.</summary>
    public static IEnumerable<string> Awaiting(ListJudgement list, SaidDoubt said, Herd herd)
    {
        ArgumentNullException.ThrowIfNull(list);
        return list.Animals.Where(animal => Awaits(animal, said, herd)).Select(animal => animal.Number);
    }

    /// <summary>Whether records of a kind whose promise is set aside would settle her answer.</summary>
    public static bool Awaits(AnimalJudgement animal, SaidDoubt said, Herd herd)
    {
        ArgumentNullException.ThrowIfNull(animal);
        ArgumentNullException.ThrowIfNull(said);
        ArgumentNullException.ThrowIfNull(herd);
        return !said.HeldBack.IsEmpty && animal.Answer == Answer.Ask
            && animal.Settle.Any(missing => missing.Reason is MissingReason.NotKept or MissingReason.NeverRecorded && said.HeldBack.Any(kind => IsOf(missing.Subject, kind, herd)));
    }

    private static bool IsOf(string subject, Kind kind, Herd herd) =>
        subject == kind.Name || subject.EndsWith($" {kind.Name}", StringComparison.Ordinal)
        || herd.Vocabulary.Spells.Any(spell => spell.Name == subject && (spell.From.Id == kind.Id || spell.Until.Id == kind.Id));
}
