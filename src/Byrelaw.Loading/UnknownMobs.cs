using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Loading;

/// <summary>Mobs that a rule names and no record does.</summary>
public static class UnknownMobs
{
    private const string Code = "J0103";

    /// <summary>One error for each, at its first place.</summary>
    public static IEnumerable<Diagnostic> In(Rulebook rulebook, Herd herd) =>
        rulebook.Mobs().Where(mob => herd.Mobs.Find(mob.Name) < 0).DistinctBy(mob => NameFolding.Fold(mob.Name)).Select(mob => Problem(mob.Span, mob.Name, herd));

    private static Diagnostic Problem(SourceSpan span, string mob, Herd herd)
    {
        var start = span.Start + Math.Max(0, span.Text.IndexOf(mob, StringComparison.Ordinal));
        var line = span.File.LineAt(start);
        var near = NearestName.To(mob, herd.Mobs.Names);
        return new Diagnostic(
            Code, Severity.Error, span.File.Path, line, span.File.ColumnAt(start), mob.Length,
            $"no record names the mob `{mob}`", $"expected a mob of {herd.AnimalsFile} or {herd.EventsFile}: who is in this one is not known of any animal",
            near is null ? null : $"did you mean `{near}`?", span.File.Line(line));
    }
}
