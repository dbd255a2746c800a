namespace Byrelaw.Language.Reading;

/// <summary>What <see cref="RulebookReader.Read"/> was asked for, so that the same can be read again.</summary>
internal sealed record ReadAsked(string Path, IRuleFiles Files, LocalDate? KnownOn, LocalDate? Today);
