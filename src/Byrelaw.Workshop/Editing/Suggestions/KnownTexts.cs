namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>Names that are not in the namespace, for suggestions.</summary>
/// <param name="Rules">Names of rules and preferences.</param>
/// <param name="Lists">Lists that there are rules for.</param>
/// <param name="Paths">Finds files that could be used, relative to the one that is written.</param>
internal sealed record KnownTexts(IReadOnlyCollection<string> Rules, IReadOnlyCollection<string> Lists, Func<IEnumerable<string>> Paths);
