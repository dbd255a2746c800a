namespace Byrelaw.Reporting.Pages;

/// <summary>What must be said wherever animals are handled, treated or chosen, at the end of a page.</summary>
internal static class CautionsPart
{
    /// <summary>All of it; what is said of prostaglandin only where a hormone may be given.</summary>
    public static Part Of(bool withHormones = true) =>
        new DocumentBuilder().Heading(2, "Cautions").Bullets(SafetyNotes.General.Where(note => withHormones || note != SafetyNotes.Prostaglandin)).As("cautions");
}
