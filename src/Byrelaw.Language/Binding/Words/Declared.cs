namespace Byrelaw.Language.Binding.Words;

/// <summary>One declared word, with the further names that layers over its file give it.</summary>
/// <param name="Line">The line that declares it.</param>
/// <param name="File">Where.</param>
internal sealed record Declared(DeclarationLine Line, RuleFile File)
{
    /// <summary>Other names for it, from its own line and from layers.</summary>
    public List<NameSyntax> Also { get; } = [];

    /// <summary>Other names for its answers, from layers: the answer, the name, and the file that gives it.</summary>
    public List<(NameSyntax Answer, NameSyntax Name, RuleFile File)> AnswersAlso { get; } = [];

    /// <summary>Further values of it, from layers: the value, and the file that adds it.</summary>
    public List<(NameSyntax Value, RuleFile File)> ValuesAdded { get; } = [];

    /// <summary>What its own line and layers say of its details, each with the file that says it.</summary>
    public List<(ClauseSyntax Clause, RuleFile File)> DetailClauses { get; } = [];

    /// <summary>The spellings of its other names.</summary>
    public ImmutableArray<string> AlsoNames => [.. Also.Select(name => name.Text)];

    /// <summary>The one clause of a kind; null where there is none.</summary>
    public T? Clause<T>() where T : ClauseSyntax
    {
        foreach (var clause in Line.Clauses)
        {
            if (clause is T found)
            {
                return found;
            }
        }

        return null;
    }
}
