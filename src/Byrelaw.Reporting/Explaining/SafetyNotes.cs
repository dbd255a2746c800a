namespace Byrelaw.Reporting.Explaining;

/// <summary>What must be said wherever animals are handled, treated or chosen. Never a dose, never a brand.</summary>
/// <remarks>What prostaglandins do to people and pregnancies is on their labels; the rest is common practice, no source.</remarks>
public static class SafetyNotes
{
    /// <summary>For every animal that stands on a list for treatment.</summary>
    public const string HormoneLine =
        "Prostaglandin ends a pregnancy: check her status today. Not to be handled by anyone who is or may be pregnant, or has asthma.";

    /// <summary>For every rule whose words speak of prostaglandin.</summary>
    public const string Prostaglandin =
        "Prostaglandin ends a pregnancy: check her status on the day, whatever this page says. It passes through the "
        + "skin; anyone who is or may be pregnant, and anyone with asthma or other trouble breathing, must not handle it. "
        + "Only as its label and a licensed vet say.";

    /// <summary>For every rule whose words speak of another hormone.</summary>
    public const string Hormone = "Hormones are given only as their label, local law and a licensed vet say.";

    /// <summary>For the end of a page, above <see cref="Documents.Page.Foot"/>.</summary>
    public static readonly string[] General =
    [
        "Medicines, hormones, sedation and every procedure are for a licensed vet to order, under the label and the law of the place. Nothing here is a dose or a prescription.",
        "Withholding periods for milk and for meat are on the label, may differ by country and market, and are not worked out here. Look them up for each animal before she is milked into the vat or sold.",
        Prostaglandin,
        "Some infections of cattle make people ill: leptospirosis through urine, Q fever and others through birth fluids and afterbirth. Gloves, washed hands, cuts covered; anyone pregnant stays away from calvings, afterbirth and aborted calves.",
        "Stop for any animal that is lame, sick, thin or distressed, whatever her answer.",
    ];

    /// <summary>The caution that belongs on a line with these words; null for none.</summary>
    public static string? For(string words)
    {
        bool Says(string word) => words.Contains(word, StringComparison.OrdinalIgnoreCase);
        return Says("prostaglandin") ? Prostaglandin
            : Says("hormone") || Says("FSH") || Says("GnRH") || Says("progesterone") || Says("oestradiol") || Says("estradiol") ? Hormone
            : null;
    }
}
