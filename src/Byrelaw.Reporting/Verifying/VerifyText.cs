namespace Byrelaw.Reporting.Verifying;

/// <summary>Whether a kept report stands, for a terminal.</summary>
public static class VerifyText
{
    private const int Shown = 20;

    /// <summary>All of it, with line ends LF.</summary>
    public static string Of(Verification verification)
    {
        ArgumentNullException.ThrowIfNull(verification);
        var text = new DocumentBuilder();
        foreach (var line in Lines(verification))
        {
            text.Sentence(line);
        }

        text.In(1);
        foreach (var animal in verification.Differences.Take(Shown))
        {
            text.Sentence(Animal(animal));
        }

        return text.Sentence(verification.Differences.Count > Shown ? $"and {verification.Differences.Count - Shown} more" : "")
            .In(0).Sentence(verification.Holds ? "The report stands." : "").OnTerminal(Ink.Plain);
    }

    private static IEnumerable<string> Lines(Verification it)
    {
        var (kept, now) = (it.Kept.Draft, it.Now);
        yield return $"{kept.Programme}: drawn up with {kept.JudgedWith}, {(kept.KnownDay.Length > 0 ? $"records to {kept.KnownDay}" : "no record with a date read")}"
            + $"{(kept.Inputs!.On is { } on ? $", judged for {on}" : "")}{(kept.Inputs.KnownOn is { } day ? $", as known on {day}" : "")}";
        if (!it.Kept.Edited.IsEmpty)
        {
            yield return $"Edited by hand since it was written: {Phrases.FirstOf(it.Kept.Edited, Shown)}"
                + (it.EditedAnimals.Count == 0 ? "" : $"; about {(it.EditedAnimals.Count == 1 ? "animal" : "animals")} {Phrases.FirstOf(it.EditedAnimals, Shown)}") + ".";
        }

        if (!it.Kept.Missing.IsEmpty)
        {
            yield return $"No longer in the report: {Phrases.FirstOf(it.Kept.Missing, Shown)}.";
        }

        yield return it.SameRules ? "The rules are the same." : $"The rules have changed since: they were {kept.Rulebook}, and are {now.Rulebook}.";
        yield return it.SameRecords ? "The records are the same." : $"The records have changed since: they were {kept.Records}, and are {now.Records}.";
        yield return Answers(it);
    }

    private static string Answers(Verification it)
    {
        var (made, program) = (it.Kept.Draft.JudgedWith, JudgedWith.NameAndVersion);
        var animals = it.Differences.Select(one => one.Animal).Distinct().Count();
        var same = it.SameRules && it.SameRecords;
        return animals == 0
                ? $"The answers are the same, with dates and reasons{(made == program ? "" : $", though the report was made with {made} and this is {program}")}."
            : !same ? $"Because of that, {Differ(animals)}:"
            : it.Kept.Edited.Contains(KeptReport.DraftFile) ? $"Where {KeptReport.DraftFile} was edited, {Differ(animals)}:"
            : made != program ? $"By the same rules and records, {Differ(animals)}: the report was made with {made}, and this is {program}. Judge anew, or ask those who make the program:"
            : $"By the same rules and records and the same version ({program}), {Differ(animals)}. Either the program is at fault, or the report was edited together with its list of files:";
    }

    private static string Differ(int animals) => animals == 1 ? "what is said of 1 animal differs" : $"what is said of {animals} animals differs";

    private static string Animal(AnswerDifference animal) => $"{animal.Animal} ({animal.List}): " + (animal.Was == animal.Now
        ? $"{Word(animal.Was)} as before, with another date, reason or record" : $"was {Word(animal.Was)}, is {Word(animal.Now)}");

    private static string Word(string? key) => key is null ? "not on the list"
        : AnswerWords.All.Where(answer => Keys.Of(answer) == key).Select(AnswerWords.Both).FirstOrDefault(key);
}
