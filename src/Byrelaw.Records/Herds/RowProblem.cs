namespace Byrelaw.Records.Herds;

/// <summary>What is wrong with a row of the records, and whose row it is.</summary>
/// <param name="Problem">Where it stands in the farm's own file.</param>
/// <param name="IsOfAnimals">Whether it is a row of an animal.</param>
/// <param name="Line">Its line in the landed form, by which it can be supposed away.</param>
/// <param name="Animal">Whose; -1 where that cannot be read.</param>
public readonly record struct RowProblem(Diagnostic Problem, bool IsOfAnimals, int Line, int Animal);
