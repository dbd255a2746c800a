namespace Byrelaw.Reporting.Tuning;

/// <summary>Every animal whose answer any value changes, with her answer at every value.</summary>
internal static class AnswersByValue
{
    public static Table Of(NumberTuning tuning)
    {
        var moved = tuning.Animals.Where(animal => animal.Runs.Length > 1).ToList();
        var table = new Table($"{Phrases.Sentence(Numbers.Count(moved.Count, "animal", "animals"))} of {tuning.Animals.Length}, by {NumberWords.Unit(tuning.Number)}", "number", "now", "her answer at every value");
        foreach (var animal in moved)
        {
            table.Add(
                Wording.Bold(animal.Number), AnswerWords.Both(animal.At(tuning.Current)),
                string.Join("; ", animal.Runs.Select(run => $"{NumberWords.Range(run.Range, tuning.Number)} {AnswerWords.Word(run.Answer)}")));
        }

        return table;
    }
}
