using System.Text.Json;

namespace Byrelaw.Records.Ade;

/// <summary>What messages say beside what they are about: that a cow is in calf, served or dry. None of it passes unread.</summary>
internal static class AdeStatus
{
    // What only an insemination or a transfer has.
    private static readonly ImmutableArray<string> OfAService = ["insemination", "straw", "semen", "sire", "embryo"];

    /// <summary>What an animal's own message says of her, as the column <c>what</c> names it. That she is dry is a drying off; the rest nobody reads, until a bullet does.</summary>
    public static IEnumerable<string> Of(AdeResource animal)
    {
        if (animal.Text("reproductionStatus") is { Length: > 0 } status && status is not ("Open" or "NotPregnant" or "Birthed" or "DoNotBreed"))
        {
            yield return $"ReproductionStatus {status}";
        }

        if (Lactation(animal.Text("lactationStatus")) is var lactation and not LeftOut)
        {
            yield return lactation;
        }
    }

    /// <summary>What a status of her milk is, as the column <c>what</c> names it.</summary>
    public static string Lactation(string status) => status is "" or "Lead" or "Fresh" or "Early" or "Lactating" or "Lactation" ? LeftOut : $"LactationStatus {status}";

    /// <summary>Whether a message about a heat holds what only a service has.</summary>
    public static bool MayBeAService(AdeResource heat) =>
        heat.Body.EnumerateObject().Any(part => part.Value.ValueKind != JsonValueKind.Null && OfAService.Any(word => part.Name.StartsWith(word, StringComparison.OrdinalIgnoreCase)));

    /// <summary>Whether a check counts calves, or says how old one is; what is no number may be one.</summary>
    public static bool HasACalf(AdeResource check) => Counts(check, "foetalAge") || Counts(check, "foetusCount");

    private const string LeftOut = "Left out";

    private static bool Counts(AdeResource check, string name) =>
        check.Body.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null && !(value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && number == 0);
}
