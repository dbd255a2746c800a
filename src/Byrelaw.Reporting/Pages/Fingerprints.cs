namespace Byrelaw.Reporting.Pages;

/// <summary>What exactly was judged by what, so that anyone can tell whether two drafts rest on the same.</summary>
public static class Fingerprints
{
    /// <summary>The part of a page.</summary>
    public static Part Of(Draft draft) => new DocumentBuilder().Fold(Wording.Bold("How this page can be checked"), new DocumentBuilder().Bullets(
        [
            $"Judged with: {JudgedWith.NameAndVersion}",
            $"Rulebook: {RulebookOf(draft)}",
            $"Records: {draft.Herd.Fingerprint}",
            $"Known day: {ReachWords.Day(draft.Herd)}",
            "byrelaw verify judges it again and says whether the answers are the same.",
        ]), onScreenOnly: true).As("fingerprints");

    /// <summary>The rulebook's fingerprint.</summary>
    public static string RulebookOf(Draft draft) => Fingerprint.Of(draft.Rulebook);
}
