namespace Byrelaw.Records.Embryos;

/// <summary>Puts a farm's embryos together: their file, the pedigree, and what the events say of them.</summary>
internal static class EmbryoReading
{
    /// <summary>The book of a herd.</summary>
    /// <param name="input">What it is read from.</param>
    /// <param name="animals">The herd's animals.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="today">Nothing in the files lies after this day.</param>
    /// <param name="knownOn">What was made after this day is not seen; null for all.</param>
    /// <param name="found">What events say of embryos.</param>
    /// <param name="mayBe">Rows that may be transfers: what cannot be read, and sheets that are not back.</param>
    /// <param name="problems">Takes what is wrong in the two files.</param>
    public static EmbryoBook Read(
        RecordInput input, AnimalTable animals, Vocabulary vocabulary, LocalDate today, LocalDate? knownOn, (ImmutableArray<EmbryoRow> Rows, int Unnamed) found,
        IEnumerable<MayBeATransfer> mayBe, List<Diagnostic> problems)
    {
        var pedigree = input.Pedigree is { } file ? PedigreeReader.Read(file, vocabulary, problems) : [];
        var embryos = input.Embryos is { } own ? new EmbryoReader(new Parents(animals, pedigree), today, problems).Read(own) : [];
        ImmutableArray<Embryo> seen = knownOn is { } day ? [.. embryos.Where(embryo => embryo.ToBeHadFrom is not { } made || made <= day)] : embryos;
        return new EmbryoBook(seen, pedigree, found.Rows, [.. mayBe]) { TransfersWithoutEmbryo = found.Unnamed };
    }

    /// <summary>What in the events may be a transfer, though it cannot be read: rows that can be a transfer's, and open rows of sheets.</summary>
    public static IEnumerable<MayBeATransfer> MayBe(IEnumerable<Gap> gaps, ImmutableArray<OpenRow> open, Vocabulary vocabulary) =>
        gaps.Where(gap => gap is { IsHint: false, IsOfSheet: false, IsOfDetails: false, IsTooNear: false, IsOfDouble: false, IsLostStart: false } && (gap.Kind < 0 || vocabulary.ById[gap.Kind] is EventKind { Marks: Marks.Transfer }))
            .Select(gap => new MayBeATransfer(null, gap.To >= Day.End ? null : Day.Date(gap.To), null))
            .Concat(open.Where(row => row.Row.Embryo is not null || row.Kind < 0 || vocabulary.ById[row.Kind] is EventKind { Marks: Marks.Transfer })
                .Select(row => new MayBeATransfer(row.Row.Embryo, null, null) { Sheet = row }));

    /// <summary>What is wrong with what became of embryos: names that no embryo has, and embryos that were used twice.</summary>
    /// <param name="book">The embryos.</param>
    /// <param name="columns">Of the events' file.</param>
    /// <param name="lines">Finds its lines as text.</param>
    /// <param name="placeOf">Says where a line stands in the farm's own files.</param>
    public static IEnumerable<Diagnostic> Problems(EmbryoBook book, EventColumns columns, Func<IEnumerable<int>, Dictionary<int, RowText>> lines, Func<int, RecordPlace> placeOf)
    {
        var first = new Dictionary<string, EmbryoRow>(StringComparer.Ordinal);
        var wrong = new List<(EmbryoRow Row, EmbryoRow? First)>();
        foreach (var row in book.Embryos.IsEmpty ? [] : book.Rows.Where(row => row.Label is not null))
        {
            if (book.Find(row.Label!) is null)
            {
                wrong.Add((row, null));
            }
            else if (!EmbryoFate.IsFreezing(row) && !row.IsNotDone && !first.TryAdd(row.Label!, row) && (row.IsTransfer || first[row.Label!].IsTransfer))
            {
                wrong.Add((row, first[row.Label!]));
            }
        }

        var texts = lines(wrong.Select(one => one.Row.Line));
        return wrong.Where(one => texts.ContainsKey(one.Row.Line)).Select(one => (one.First, Text: texts[one.Row.Line], Cell: CellOf(one.Row, columns), one.Row)).Select(one =>
            one.First is { } before ? EmbryoProblems.UsedTwice(one.Text, one.Cell, placeOf(before.Line))
            : EmbryoProblems.UnknownEmbryo(one.Text, one.Cell));
    }

    private static int CellOf(EmbryoRow row, EventColumns columns) => !row.IsTransfer ? columns.Animal
        : columns.Details.FirstOrDefault(column => column.DetailOf[row.Kind.Id] is var place and >= 0 && NameFolding.Fold(row.Kind.Details[place].Name) == "embryo")?.Cell ?? columns.Animal;
}
