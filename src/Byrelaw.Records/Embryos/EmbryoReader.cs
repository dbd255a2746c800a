namespace Byrelaw.Records.Embryos;

/// <summary>Reads <c>embryos.csv</c>, each row against the animals that may be its parents.</summary>
internal sealed class EmbryoReader(Parents parents, LocalDate today, List<Diagnostic> problems)
{
    // Grades 3 and 4, poor and dead, seldom live through freezing and thawing: common practice, no source.
    private const int PoorFrom = 3;

    // An embryo is frozen before it hatches, on its ninth day or so: from memory, no source.
    private const int OldestFrozen = 9;

    private readonly Dictionary<string, int> _straws = new(StringComparer.Ordinal);
    private readonly HashSet<string> _doubledStraws = new(StringComparer.Ordinal);

    /// <summary>The embryos, in the file's order, each once; one whose row cannot be read is there by its label.</summary>
    public ImmutableArray<Embryo> Read(RecordFile file)
    {
        var rows = LabelledRows.Read(file, "embryo", heading => EmbryoColumns.Read(heading, problems), problems);
        List<Embryo> embryos = [.. rows.Rows.Select(row => row.IsWhole ? Of(row.Label, row.Row, row.Cells) : new Embryo(row.Label, row.Row.Line) { IsReadable = false })];
        return [.. embryos.Select(embryo => rows.IsDoubled(embryo.Label) || (embryo.Straw is { } straw && _doubledStraws.Contains(straw)) ? embryo with { IsReadable = false } : embryo)];
    }

    private Embryo Of(string label, RowText row, EmbryoCells cells)
    {
        var embryo = new Embryo(label, row.Line)
        {
            Straw = cells.Text("straw"),
            Donor = Parent(row, cells, "donor", isDonor: true),
            Sire = Parent(row, cells, "sire", isDonor: false),
            MadeBy = cells.OneOf("made by", "collected eggs", "flush") switch { "collected eggs" => EmbryoMaking.CollectedEggs, "flush" => EmbryoMaking.Flush, _ => EmbryoMaking.NotKnown },
            Collected = Past(row, cells, "collected"),
            FrozenOn = Past(row, cells, "frozen on"),
            AgeFrozen = cells.Whole("age frozen", OldestFrozen),
            Stage = cells.Whole("stage", 9),
            Grade = cells.Whole("grade", 4),
            Semen = cells.OneOf("semen", "sexed female", "sexed male", "unsexed"),
            Sex = cells.OneOf("sex", "F", "M") switch { "F" => Sex.Female, "M" => Sex.Male, _ => Sex.NotKnown },
            Breed = cells.Text("breed"),
            Owner = cells.Text("owner"),
        };
        Straw(row, cells, embryo);
        Together(row, cells, embryo);
        return embryo with { IsReadable = cells.AreReadable };
    }

    private LocalDate? Past(RowText row, EmbryoCells cells, string column)
    {
        var day = cells.Date(column);
        if (day > today)
        {
            cells.Refuse(EmbryoProblems.AfterToday(row, cells.At(column), today));
        }

        return day;
    }

    private string? Parent(RowText row, EmbryoCells cells, string column, bool isDonor)
    {
        if (cells.Text(column) is not { } name)
        {
            return null;
        }

        if (parents.SexOf(name) is not { } sex)
        {
            cells.Refuse(EmbryoProblems.UnknownParent(row, cells.At(column), parents.Nearest(name)));
        }
        else if (isDonor ? sex is Sex.Male or Sex.Steer : sex is Sex.Female)
        {
            cells.Refuse(EmbryoProblems.ParentOfOtherSex(row, cells.At(column), isDonor));
        }

        return name;
    }

    private void Straw(RowText row, EmbryoCells cells, Embryo embryo)
    {
        if (embryo.Straw is { } straw && !_straws.TryAdd(straw, row.Line))
        {
            cells.Refuse(EmbryoProblems.Twice(row, cells.At("straw"), "straw", _straws[straw]));
            _doubledStraws.Add(straw);
        }
    }

    /// <summary>What cells say together.</summary>
    private static void Together(RowText row, EmbryoCells cells, Embryo embryo)
    {
        if (embryo.FrozenOn < embryo.Collected)
        {
            cells.Refuse(EmbryoProblems.FrozenBeforeCollected(row, cells.At("frozen on")));
            return;
        }

        if (embryo is { WasFrozen: true, Grade: >= PoorFrom })
        {
            cells.Warn(EmbryoProblems.FrozenPoor(row, cells.At("grade")));
        }

        if (embryo is { WasFrozen: true, Stage: { } stage, FrozenOn: var frozen } && (embryo.AgeFrozen ?? (frozen is { } day ? AgeThen(embryo, day) : null)) is { } age && !StageDays.Fits(stage, age))
        {
            cells.Warn(EmbryoProblems.StageAgainstAge(row, cells.At("stage"), age));
        }

        if (embryo is { Sex: Sex.Male, Semen: "sexed female" } or { Sex: Sex.Female, Semen: "sexed male" })
        {
            cells.Warn(EmbryoProblems.SexAgainstSemen(row, cells.At("sex")));
        }
    }

    private static int? AgeThen(Embryo embryo, LocalDate frozen) => (embryo with { FrozenOn = null, AgeFrozen = null }).AgeOn(frozen);
}
