namespace Byrelaw.Reporting.Verifying;

/// <summary>A kept report beside the same lists, judged anew from what its inputs are now.</summary>
/// <param name="Kept">The report.</param>
/// <param name="Now">The answers of today's inputs.</param>
/// <param name="Differences">Animals of which the two say something different.</param>
/// <param name="EditedAnimals">Animals on edited lines of the report, as far as that can be told.</param>
public sealed record Verification(KeptReport Kept, DraftJson Now, IReadOnlyList<AnswerDifference> Differences, IReadOnlyList<string> EditedAnimals)
{
    /// <summary>Whether the rules have the fingerprint they had.</summary>
    public bool SameRules => Kept.Draft.Rulebook == Now.Rulebook;

    /// <summary>Whether the records have the fingerprint they had.</summary>
    public bool SameRecords => Kept.Draft.Records == Now.Records;

    /// <summary>Whether files of the report were changed or taken away.</summary>
    public bool IsEdited => !Kept.Edited.IsEmpty || !Kept.Missing.IsEmpty;

    /// <summary>Whether the report stands: nothing edited, the same rules and records, the same answers.</summary>
    public bool Holds => !IsEdited && SameRules && SameRecords && Differences.Count == 0;

    /// <summary>Holds a report to a draft that was judged as its inputs say.</summary>
    public static Verification Of(KeptReport kept, Draft draft)
    {
        ArgumentNullException.ThrowIfNull(kept);
        var now = JsonText.Shape(draft, kept.Draft.Inputs);
        var differences = AnswerDifference.Between(kept.Draft, now);
        var same = kept.Draft.Rulebook == now.Rulebook && kept.Draft.Records == now.Records && kept.Draft.JudgedWith == now.JudgedWith;
        var numbers = kept.Draft.Lists.Concat(now.Lists).SelectMany(list => list.Animals ?? []).Select(animal => animal.Animal).ToHashSet(StringComparer.Ordinal);
        var anew = same && kept.Edited.Length > 0
            ? Report.Of(draft, kept.Draft.Inputs).Where(file => kept.Edited.Contains(file.Path)).ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal) : [];
        var edited = kept.Edited.Where(path => path != KeptReport.DraftFile)
            .SelectMany(path => Verifying.EditedAnimals.In(path, File.ReadAllText(Path.Combine(kept.Folder, path)), anew.GetValueOrDefault(path), numbers))
            .Concat(same && kept.Edited.Contains(KeptReport.DraftFile) ? differences.Select(animal => animal.Animal) : []);
        return new Verification(kept, now, differences, [.. edited.Distinct()]);
    }
}
