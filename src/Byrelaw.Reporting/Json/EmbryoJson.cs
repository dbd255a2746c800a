using Byrelaw.Records.Embryos;

namespace Byrelaw.Reporting.Json;

/// <summary>An embryo and what has become of it, for programs.</summary>
/// <param name="Embryo">Its label.</param>
/// <param name="State"><c>fresh</c>, <c>in_the_tank</c>, <c>used</c>, <c>discarded</c> or <c>in_doubt</c>.</param>
/// <param name="On">The day on which that became so; null where no row says it.</param>
/// <param name="Recipient">Who carries it; null where it was put into nobody.</param>
/// <param name="Why">Why it is in doubt; null where it is not.</param>
public sealed record EmbryoJson(string Embryo, string State, string? On, string? Recipient, string? Why)
{
    /// <summary>All of them, in the file's order.</summary>
    internal static IEnumerable<EmbryoJson> Of(Herd herd) => herd.Embryos.Embryos.Select(embryo => Of(embryo, herd));

    private static EmbryoJson Of(Embryo embryo, Herd herd)
    {
        var standing = herd.Embryos.StandingOf(embryo);
        var by = standing.Why is null ? standing.By : null;
        return new EmbryoJson(
            embryo.Label, EmbryoWords.Of(standing.State).Replace(' ', '_'), by?.Date is { } day ? LocalDatePattern.Iso.Format(day) : null,
            by is { Animal: >= 0 } ? herd.Numbers[by.Animal] : null, EmbryoWords.Doubt(embryo, herd));
    }
}
