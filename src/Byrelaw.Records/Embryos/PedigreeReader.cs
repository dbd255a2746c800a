namespace Byrelaw.Records.Embryos;

/// <summary>Reads <c>pedigree.csv</c>.</summary>
internal static class PedigreeReader
{
    /// <summary>Its animals, in the file's order; a row that cannot be read names nobody.</summary>
    public static ImmutableArray<PedigreeAnimal> Read(RecordFile file, Vocabulary vocabulary, List<Diagnostic> problems)
    {
        var rows = LabelledRows.Read(file, "animal", heading => EmbryoColumns.ReadPedigree(heading, vocabulary, problems), problems);
        return [.. rows.Rows.Where(row => row.IsWhole).Select(row => Of(row.Label, row.Row.Line, row.Cells))];
    }

    private static PedigreeAnimal Of(string name, int line, EmbryoCells cells)
    {
        var sex = cells.OneOf("sex", "F", "M", "steer") switch { "F" => Sex.Female, "M" => Sex.Male, "steer" => Sex.Steer, _ => Sex.NotKnown };
        return new PedigreeAnimal(name, cells.Text("official id"), sex, cells.Text("breed"), cells.Text("sire"), cells.Text("dam"), line);
    }
}
