namespace Byrelaw.Records.Embryos;

/// <summary>A bull, a bought donor or an ancestor, as <c>pedigree.csv</c> has it. Such animals are never judged, listed or counted.</summary>
/// <param name="Name">What it goes by in this farm's files.</param>
/// <param name="OfficialId">Its official identity; null where nobody says.</param>
/// <param name="Sex">As on record.</param>
/// <param name="Breed">As on record; null where nobody says.</param>
/// <param name="Sire">Its father; null where nobody says.</param>
/// <param name="Dam">Its mother; null where nobody says.</param>
/// <param name="Line">Its line of the file.</param>
public sealed record PedigreeAnimal(string Name, string? OfficialId, Sex Sex, string? Breed, string? Sire, string? Dam, int Line);
