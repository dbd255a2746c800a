namespace Byrelaw.Reporting.Pages;

/// <summary>What must be said wherever animals are handled, treated or chosen, at the end of a page.</summary>
internal static class CautionsPart
{
    /// <summary>All but what stands at the foot of every page already.</summary>
    public static Part Of() => new DocumentBuilder().Heading(2, "Cautions").Bullets(SafetyNotes.General.Where(note => note != Page.Foot)).As("cautions");
}
