namespace Byrelaw.Planning.Sheets;

/// <summary>The event that a row of hormones and devices becomes.</summary>
public static class TreatmentKind
{
    /// <summary>The first that <c>marks treatment</c> and says by which method; else the first that marks it; null for none: then what is given could not be written down.</summary>
    public static EventKind? Of(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        var marked = vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Treatment).ToList();
        return marked.Find(kind => kind.Details.Any(detail => NameFolding.Fold(detail.Name) == "method")) ?? marked.FirstOrDefault();
    }
}
