namespace Byrelaw.Records.Herds;

/// <summary>
/// Days that a promise does not cover, though days before and after them are: between two stretches, or where the records
/// of an animal contradict each other. Unlike a <see cref="Gap"/> it is no row, so no sample can stand on it.
/// </summary>
/// <param name="Animal">Whose; -1 for every animal.</param>
/// <param name="Kind">The kind's id.</param>
/// <param name="From">The first day.</param>
/// <param name="To">The last.</param>
/// <param name="IsDoubt">Whether the farm says that it is covered, and is not believed.</param>
public readonly record struct Hole(int Animal, int Kind, int From, int To, bool IsDoubt = false);
