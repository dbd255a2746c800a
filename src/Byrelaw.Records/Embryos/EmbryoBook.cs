namespace Byrelaw.Records.Embryos;

/// <summary>The embryos of a farm: how each was made, and what has become of it. Old transfers that name no embryo are counted, no more.</summary>
public sealed class EmbryoBook
{
    /// <summary>One row an embryo, in the records' folder. The program never writes to it.</summary>
    public const string EmbryosFile = "embryos.csv";

    /// <summary>Bulls, bought donors and ancestors, in the records' folder.</summary>
    public const string PedigreeFile = "pedigree.csv";

    /// <summary>No embryos.</summary>
    public static readonly EmbryoBook None = new([], [], [], []);

    private readonly Dictionary<string, Embryo> _byLabel;
    private readonly ILookup<string, EmbryoRow> _rows;
    private readonly Dictionary<string, EmbryoStanding> _standings;

    internal EmbryoBook(ImmutableArray<Embryo> embryos, ImmutableArray<PedigreeAnimal> pedigree, ImmutableArray<EmbryoRow> rows, ImmutableArray<MayBeATransfer> mayBe)
    {
        (Embryos, Pedigree, Rows) = (embryos, pedigree, rows);
        _byLabel = embryos.ToDictionary(embryo => embryo.Label, StringComparer.Ordinal);
        _rows = rows.Where(row => row.Label is not null).ToLookup(row => row.Label!, StringComparer.Ordinal);
        ImmutableArray<MayBeATransfer> any = [.. mayBe, .. rows.Where(row => (row.IsTransfer || row.IsNotDone) && (row.Label is null || !_byLabel.ContainsKey(row.Label))).Select(row => new MayBeATransfer(null, row.Date, row))];
        _standings = embryos.ToDictionary(embryo => embryo.Label, embryo => EmbryoFate.Of(embryo, [.. _rows[embryo.Label]], any), StringComparer.Ordinal);
    }

    /// <summary>In the file's order, each once.</summary>
    public ImmutableArray<Embryo> Embryos { get; }

    /// <summary>In the file's order.</summary>
    public ImmutableArray<PedigreeAnimal> Pedigree { get; }

    /// <summary>What became of embryos, by day.</summary>
    public ImmutableArray<EmbryoRow> Rows { get; }

    /// <summary>How many transfers on record name no embryo.</summary>
    public int TransfersWithoutEmbryo { get; init; }

    /// <summary>The embryo with a label; null where there is none.</summary>
    public Embryo? Find(string label) => _byLabel.GetValueOrDefault(label);

    /// <summary>What has become of one.</summary>
    /// <exception cref="KeyNotFoundException">It is none of these.</exception>
    public EmbryoStanding StandingOf(Embryo embryo)
    {
        ArgumentNullException.ThrowIfNull(embryo);
        return _standings[embryo.Label];
    }

    /// <summary>How many days old one was, or is, on a day; null where nobody can tell.</summary>
    public int? AgeOn(Embryo embryo, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(embryo);
        return embryo.AgeOn(day, _rows[embryo.Label].FirstOrDefault(EmbryoFate.IsFreezing)?.Date);
    }
}
