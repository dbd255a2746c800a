namespace Byrelaw.Checking.MadeUp;

/// <summary>Something that is on record of a made-up animal.</summary>
/// <param name="Date">When.</param>
/// <param name="Animal">Her number, or <c>mob:</c> and a mob's name.</param>
/// <param name="Kind">An event, measure or test by any of its names.</param>
/// <param name="Value">The result, or the mob's name; empty for an event.</param>
/// <param name="Unit">The unit of an amount; empty for none.</param>
/// <param name="Line">The line of the rule file that it is written on, from 1; explanations name it. 0 where it is written nowhere.</param>
public sealed record MadeUpRow(LocalDate Date, string Animal, string Kind, string Value = "", string Unit = "", int Line = 0)
{
    /// <summary>Details by name, in the text that a cell would have.</summary>
    public ImmutableArray<(string Detail, string Value)> Details { get; init; } = [];
}
