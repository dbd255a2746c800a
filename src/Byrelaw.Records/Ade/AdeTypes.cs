namespace Byrelaw.Records.Ade;

/// <summary>What messages of the exchange there are.</summary>
internal static class AdeTypes
{
    /// <summary>Those that are read, and those that tell of a service or a pregnancy in some other way and so are in doubt; the longer before what is in it.</summary>
    private static readonly ImmutableArray<string> Telling =
    [
        "Insemination", "PregnancyCheck", "DryOff", "Parturition", "Abortion", "Heat", "Departure", "Death", "Arrival", "AnimalSetJoin", "AnimalSetLeave", "AnimalSet", "AnimalCore",
        "ReproStatusObserved", "LactationStatusObserved", "EmbryoFlushing", "Gestation",
    ];

    /// <summary>Those that tell of no service, calving, test or move; a bullet of the farm's own may read them all the same.</summary>
    private static readonly ImmutableArray<string> Others =
    [
        "Birth", "DoNotBreed", "MatingRecommendation", "StatusObserved", "TestDay", "Weight", "Diagnosis", "Treatment", "Withdrawal", "Conformation", "TypeClassification", "BreedingValue",
        "MilkingVisit", "Milking", "Feed", "Ration", "Lactation", "Statistics", "Device", "Location", "Scheme", "Medicine", "Inventory", "Semen", "Embryo", "Attention", "Carcass", "Progeny",
    ];

    /// <summary>The type that a message's own word names; empty where nobody knows it.</summary>
    public static string Said(string word) => Telling.Concat(Others).FirstOrDefault(type => word.Contains(type, StringComparison.OrdinalIgnoreCase)) ?? "";

    /// <summary>
    /// The type that a file's name speaks of, for messages that do not say themselves what they are; empty for none. By its file's name alone no message is passed over:
    /// <c>feedback.json</c> tells of no feed.
    /// </summary>
    public static string Named(string file) => Telling.FirstOrDefault(type => file.Contains(type, StringComparison.OrdinalIgnoreCase)) ?? "";

    /// <summary>Whether messages of a type are passed over.</summary>
    public static bool IsPassedOver(string type) => Others.Contains(type);
}
