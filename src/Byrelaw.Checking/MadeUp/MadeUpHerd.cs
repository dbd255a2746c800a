using Byrelaw.Records.Reading;

namespace Byrelaw.Checking.MadeUp;

/// <summary>
/// A herd of made-up animals. It is written down as a farm's two files and read as those are, so that a rule tried here
/// means what it means on a farm.
/// </summary>
/// <param name="Animals">At least one; the first is the one that the rule is tried on.</param>
/// <param name="Rows">What is on record, in any order.</param>
/// <param name="KnownDay">The day the records reach; no row is later.</param>
public sealed record MadeUpHerd(ImmutableArray<MadeUpAnimal> Animals, ImmutableArray<MadeUpRow> Rows, LocalDate KnownDay)
{
    /// <summary>Before any animal was born: what is kept is kept since then.</summary>
    public static readonly LocalDate Ever = new(1900, 1, 1);

    /// <summary>Kinds of which it is not said that all that happened is on record. Every other event is complete.</summary>
    public ImmutableArray<Kind> NotKept { get; init; } = [];

    /// <summary>Mobs that there are though nobody here was ever in them: those that the rules name.</summary>
    public IEnumerable<string> Mobs { get; init; } = [];

    /// <summary>The rule file that the animals stand in, as explanations name it.</summary>
    public string ShownFile { get; init; } = "";

    /// <summary>Reads it.</summary>
    /// <returns>A herd whose evidence names <see cref="ShownFile"/> and the lines given, and whose problems are those
    /// that the same rows would have in a farm's files (by their place in those, not in the rule file).</returns>
    public Herd Read(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        var files = new MadeUpFiles(this, vocabulary);
        var herd = HerdReader.Read((ShownFile, files.Animals), (ShownFile, files.Events), vocabulary, Keeping(vocabulary));
        foreach (var run in herd.Runs)
        {
            Rename(run.Lines, files.LineOfRow);
        }

        foreach (var run in herd.MobRuns)
        {
            Rename(run?.Lines ?? [], files.LineOfRow);
        }

        foreach (var run in herd.OwnRuns)
        {
            Rename(run?.Lines ?? [], files.LineOfRow);
        }

        foreach (var run in herd.GroupRuns)
        {
            Rename(run?.Lines ?? [], files.LineOfRow);
        }

        var spells = herd.MobRows.Spells;
        for (var i = 0; i < spells.Length; i++)
        {
            spells[i] = spells[i] with { Line = files.LineOfRow(spells[i].Line) };
        }

        var gaps = herd.Coverage.Gaps;
        for (var i = 0; i < gaps.Length; i++)
        {
            gaps[i] = gaps[i].IsLostStart ? gaps[i] with { Line = files.LineOfRow(gaps[i].Line) } : gaps[i];
        }

        herd.Mobs.Add(Mobs);
        herd.Details.Renumber(files.LineOfRow);
        Rename(herd.Mobs.Lines, files.LineOfRow);
        Rename(herd.AnimalLines, files.LineOfAnimal);
        return herd;
    }

    /// <summary>What such a herd says of its records: everything that happened is there, but for what is not kept.</summary>
    public RecordKeeping Keeping(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        var complete = new Completeness([.. vocabulary.Kinds.Where(kind => !NotKept.Contains(kind))], Ever, Nowhere);
        return new RecordKeeping("", KnownDay, [complete], [], Nowhere);
    }

    private static SourceSpan Nowhere { get; } = new(new SourceFile("", ""), 0, 0);

    private static void Rename(int[] lines, Func<int, int> written)
    {
        for (var i = 0; i < lines.Length; i++)
        {
            lines[i] = written(lines[i]);
        }
    }
}
