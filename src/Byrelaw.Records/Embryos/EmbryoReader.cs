namespace Byrelaw.Records.Embryos;

/// <summary>Reads <c>embryos.csv</c>, each row against the animals that may be its parents.</summary>
internal sealed class EmbryoReader(Parents parents, LocalDate today, List<Diagnostic> problems)
{
    private const int PoorFrom = 3;
    private const int OldestFrozen = 9;

    private readonly Dictionary<string, int> _labels = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _straws = new(StringComparer.Ordinal);
    private readonly HashSet<string> _doubled = new(StringComparer.Ordinal);

    /// <summary>The embryos, in the file's order, each once; one whose row cannot be read is there by its label.</summary>
    public ImmutableArray<Embryo> Read(RecordFile file)
    {
        var (map, rows) = LabelledRows.Read(file, "embryo", heading => EmbryoColumns.Read(heading, problems), problems);
        var embryos = new List<Embryo>();
        foreach (var (row, isWhole) in map is null ? [] : rows)
        {
            var cells = new EmbryoCells(row, map!, problems);
            if (cells.Text("embryo") is not { } label)
            {
                if (isWhole)
                {
                    problems.Add(EmbryoProblems.NoLabel(row, cells.At("embryo"), EmbryoBook.EmbryosFile));
                }
            }
            else if (!_labels.TryAdd(label, row.Line))
            {
                problems.Add(EmbryoProblems.Twice(row, cells.At("embryo"), "embryo", _labels[label]));
                _doubled.Add(label);
            }
            else
            {
                embryos.Add(isWhole ? Of(label, row, cells) : new Embryo(label, row.Line) { IsReadable = false });
            }
        }

        return [.. embryos.Select(embryo => _doubled.Contains(embryo.Label) || (embryo.Straw is { } straw && _doubled.Contains(OfStraw(straw))) ? embryo with { IsReadable = false } : embryo)];
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
            _doubled.Add(OfStraw(straw));
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

    // Labels and straws share one set: a label cannot hold a line end.
    private static string OfStraw(string straw) => "\n" + straw;
}
