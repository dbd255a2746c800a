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
/// <param name="rulebook">The rules.</param>
/// <param name="records">The records.</param>
/// <param name="knownOn">Read and judged as known on this day; null for today's.</param>
public sealed class SupposedFarm(Rulebook rulebook, FarmRecords records, LocalDate? knownOn = null)
{
    /// <summary>The same of the two landed files: their names in messages, and their bytes.</summary>
    public SupposedFarm(Rulebook rulebook, (string Shown, byte[] Text) animals, (string Shown, byte[] Text) events, LocalDate? knownOn = null)
        : this(rulebook, FarmRecords.Of(animals, events), knownOn)
    {
    }

    /// <summary>The herd, with the promises that count.</summary>
    public Herd Herd(Supposition supposition)
    {
        ArgumentNullException.ThrowIfNull(supposition);
        var with = supposition.Of(rulebook);
        return Believed.Of(with, records.Read(with.Vocabulary, with.Records, knownOn, supposition.Records), supposition.Unless);
    }

    /// <summary>Judges it.</summary>
    public Judge Judge(Supposition supposition)
    {
        ArgumentNullException.ThrowIfNull(supposition);
        return new Judge(supposition.Of(rulebook), Herd(supposition), knownOn);
    }
}
