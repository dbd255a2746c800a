namespace Byrelaw.Records.Building;

/// <summary>A row that alone names a mob.</summary>
/// <param name="Row">Which.</param>
/// <param name="Name">The name.</param>
/// <param name="Meant">The mob that is perhaps meant.</param>
internal sealed record SlippedMob(RowInDoubt Row, string Name, string Meant);
