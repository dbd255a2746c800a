using Byrelaw.Judging.Promises;
using Byrelaw.Records.Reading;

namespace Byrelaw.Judging.Supposing;

/// <summary>
/// Something that is supposed of a farm: rows that stand in its book or do not, promises that it makes, doubts that do not stand. All else is as it
/// is. What is supposed of days to come is never sure: who comes through by it is On course, not Ready.
/// </summary>
public sealed record Supposition
{
    /// <summary>Rows that stand there, and lines that do not.</summary>
    public Supposed Records { get; init; } = new();

    /// <summary>Promises that the farm makes besides; of a kind that it promises already they take the place of what it said.</summary>
    public ImmutableArray<Completeness> Promises { get; init; } = [];

    /// <summary>Which doubts about promises do not stand; null for none.</summary>
    public Predicate<Doubted>? Unless { get; init; }

    /// <summary>The rulebook with these promises.</summary>
    public Rulebook Of(Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        if (Promises.IsEmpty)
        {
            return rulebook;
        }

        var anew = Promises.SelectMany(promise => promise.Kinds).ToHashSet();
        var keeping = rulebook.Records ?? new RecordKeeping("", null, [], [], Promises[0].Span);
        return rulebook with
        {
            Records = keeping with
            {
                Complete = [.. keeping.Complete.Select(promise => promise with { Kinds = promise.Kinds.RemoveAll(anew.Contains) }).Where(promise => !promise.Kinds.IsEmpty), .. Promises],
            },
        };
    }
}

/// <summary>A farm's records, to be judged under one supposition after the other: each time as if they were so.</summary>
public sealed class SupposedFarm
{
    private readonly Rulebook _rulebook;
    private readonly Func<Vocabulary, RecordKeeping?, Supposed, Herd> _read;
    private readonly LocalDate? _knownOn;
    private readonly Herd? _asItIs;

    /// <summary>A farm whose records are read anew.</summary>
    /// <param name="rulebook">The rules.</param>
    /// <param name="records">The records.</param>
    /// <param name="knownOn">Read and judged as known on this day; null for today's.</param>
    public SupposedFarm(Rulebook rulebook, FarmRecords records, LocalDate? knownOn = null)
    {
        ArgumentNullException.ThrowIfNull(records);
        (_rulebook, _knownOn, _read) = (rulebook, knownOn, (words, keeping, supposed) => records.Read(words, keeping, knownOn, supposed));
    }

    /// <summary>The same of the two landed files: their names in messages, and their bytes.</summary>
    public SupposedFarm(Rulebook rulebook, (string Shown, byte[] Text) animals, (string Shown, byte[] Text) events, LocalDate? knownOn = null)
        : this(rulebook, FarmRecords.Of(animals, events), knownOn)
    {
    }

    private SupposedFarm(Rulebook rulebook, Herd herd, Func<Supposed, Herd> again, LocalDate? knownOn) =>
        (_rulebook, _asItIs, _knownOn, _read) = (rulebook, herd, knownOn, (_, _, supposed) => again(supposed));

    /// <summary>A farm of which only rows are supposed: its records are read, and its promises held against them, already.</summary>
    /// <param name="rulebook">The rules.</param>
    /// <param name="herd">The herd.</param>
    /// <param name="knownOn">Judged as known on this day, on which it was read; null for today's.</param>
    /// <returns>Null for a herd that was not read.</returns>
    public static SupposedFarm? Of(Rulebook rulebook, Herd herd, LocalDate? knownOn = null)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.ReadAgain is { } again ? new SupposedFarm(rulebook, herd, again, knownOn) : null;
    }

    /// <summary>The herd, with the promises that count.</summary>
    public Herd Herd(Supposition supposition)
    {
        ArgumentNullException.ThrowIfNull(supposition);
        if (_asItIs is not null && IsOfRowsOnly(supposition) && ResultsLaidOver.Over(_asItIs, supposition.Records.Rows) is { } laidOver)
        {
            return laidOver;
        }

        var with = supposition.Of(_rulebook);
        return Believed.Of(with, _read(with.Vocabulary, with.Records, supposition.Records), supposition.Unless);
    }

    /// <summary>Judges it.</summary>
    public Judge Judge(Supposition supposition)
    {
        ArgumentNullException.ThrowIfNull(supposition);
        return new Judge(supposition.Of(_rulebook), Herd(supposition), _knownOn);
    }

    /// <summary>Whether nothing but rows is supposed: then how far the records reach, what they promise and what about them is doubted stay as they are.</summary>
    private static bool IsOfRowsOnly(Supposition supposition) => supposition.Promises.IsEmpty && supposition.Unless is null && supposition.Records.WithoutLines.Count == 0;
}
