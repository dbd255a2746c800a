namespace Byrelaw.Records.Embryos;

/// <summary>The columns of <c>embryos.csv</c> and <c>pedigree.csv</c>. Any order, most of them may be missing; a further column is told of and not read.</summary>
internal static class EmbryoColumns
{
    private static readonly string[] OfEmbryos =
        ["embryo", "straw", "donor", "sire", "made by", "collected", "frozen on", "age frozen", "stage", "grade", "semen", "sex", "breed", "owner", "note"];

    private static readonly string[] OfPedigree = ["animal", "official id", "sex", "born", "breed", "sire", "dam"];

    /// <summary>Those of embryos; null where nothing can be read under the heading.</summary>
    public static ColumnMap? Read(RowText heading, List<Diagnostic> problems) => Read(heading, OfEmbryos, [], problems);

    /// <summary>Those of a pedigree, facts that the rule files declare among them.</summary>
    public static ColumnMap? ReadPedigree(RowText heading, Vocabulary vocabulary, List<Diagnostic> problems) =>
        Read(heading, OfPedigree, vocabulary.Facts.SelectMany(fact => fact.AlsoNames.Prepend(fact.Name)), problems);

    private static ColumnMap? Read(RowText heading, string[] known, IEnumerable<string> besides, List<Diagnostic> problems)
    {
        var columns = known.ToDictionary(name => name, name => name, StringComparer.Ordinal);
        foreach (var name in besides)
        {
            columns.TryAdd(ColumnMap.Fold(name), name);
        }

        return ColumnMap.Read(heading, columns, [known[0]], $"expected {ColumnMap.Listed(known, "or")}", problems);
    }
}
