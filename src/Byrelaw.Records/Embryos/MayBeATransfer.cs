namespace Byrelaw.Records.Embryos;

/// <summary>What may have ended an embryo, in a cow or by being discarded, though nobody can tell of which it is, or whether it took place.</summary>
/// <param name="Label">Of which one, where that is known: it stands on a sheet that is not back; null for any that was to be had.</param>
/// <param name="Until">The last day that it may be of; null for any.</param>
/// <param name="Row">The row that names an embryo nobody knows; null for none.</param>
internal sealed record MayBeATransfer(string? Label, LocalDate? Until, EmbryoRow? Row)
{
    /// <summary>The open row of a sheet; null for none.</summary>
    public OpenRow? Sheet { get; init; }

    /// <summary>Whether it may be of an embryo: of one that was not to be had yet it cannot.</summary>
    public bool MayBeOf(Embryo embryo) => Label is not null ? Label == embryo.Label : Until is null || embryo.ToBeHadFrom is null || embryo.ToBeHadFrom <= Until;
}
