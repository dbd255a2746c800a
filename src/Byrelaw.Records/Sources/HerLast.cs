namespace Byrelaw.Records.Sources;

/// <summary>What a sheet with a row for each animal says of the days after an entry: that none of its kind came.</summary>
/// <param name="Animal">Her number.</param>
/// <param name="Kind">The kind's id.</param>
/// <param name="From">The day of her last entry; <see cref="Day.Start"/> where there never was one.</param>
/// <param name="To">The day of which the sheet is true.</param>
internal readonly record struct HerLast(string Animal, int Kind, int From, int To);
