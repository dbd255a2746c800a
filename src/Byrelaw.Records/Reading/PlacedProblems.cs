using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Reading;

/// <summary>Problems of rows where they stand in their sources, in the order of the rows, each with whose row it is; of a source or a column that is not there only that is told.</summary>
/// <param name="places">Where rows stand; null for the landed files.</param>
/// <param name="animals">All animals.</param>
/// <param name="columns">The columns of the events' file; null where nothing in it can be read.</param>
internal sealed class PlacedProblems(SourcePlaces? places, AnimalTable animals, EventColumns? columns)
{
    /// <summary>Those of one of the two files.</summary>
    public IEnumerable<RowProblem> Of(IEnumerable<Diagnostic> problems, bool ofAnimals)
    {
        var whose = new WhoseRow(animals, ofAnimals ? null : columns);
        var rows = problems.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column).ThenBy(problem => problem.Code, StringComparer.Ordinal)
            .Select(problem => new RowProblem(problem, ofAnimals, problem.Line, whose.Of(problem)));
        return places is null ? rows
            : rows.Where(row => places.Of(ofAnimals, row.Line).Line > 0 && !places.IsOfMissingColumn(row.Problem, ofAnimals)).Select(row => row with { Problem = places.Of(row.Problem, ofAnimals) })
                .DistinctBy(row => (row.Problem.File, row.Problem.Line, row.Problem.Column, row.Problem.Code));
    }
}
