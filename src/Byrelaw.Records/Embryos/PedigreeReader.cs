namespace Byrelaw.Records.Embryos;

/// <summary>Reads <c>pedigree.csv</c>.</summary>
internal static class PedigreeReader
{
    /// <summary>Its animals, in the file's order; a row that cannot be read names nobody.</summary>
    public static ImmutableArray<PedigreeAnimal> Read(RecordFile file, Vocabulary vocabulary, List<Diagnostic> problems)
    {
        var (map, rows) = LabelledRows.Read(file, "animal", heading => EmbryoColumns.ReadPedigree(heading, vocabulary, problems), problems);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var animals = ImmutableArray.CreateBuilder<PedigreeAnimal>();
        foreach (var (row, isWhole) in map is null ? [] : rows)
        {
            var cells = new EmbryoCells(row, map!, problems);
            if (!isWhole)
            {
                continue;
            }

            if (cells.Text("animal") is not { } name)
            {
                problems.Add(EmbryoProblems.NoLabel(row, cells.At("animal"), EmbryoBook.PedigreeFile));
            }
            else if (!seen.TryAdd(name, row.Line))
            {
                problems.Add(EmbryoProblems.Twice(row, cells.At("animal"), "animal", seen[name]));
            }
            else
            {
                var sex = cells.OneOf("sex", "F", "M", "steer") switch { "F" => Sex.Female, "M" => Sex.Male, "steer" => Sex.Steer, _ => Sex.NotKnown };
                animals.Add(new PedigreeAnimal(name, cells.Text("official id"), sex, cells.Text("breed"), cells.Text("sire"), cells.Text("dam"), row.Line));
            }
        }

        return animals.ToImmutable();
    }
}
