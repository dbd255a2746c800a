namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>What it means that something happened to her, never happened, or happened so long ago.</summary>
internal sealed class Happenings(Quantities quantities, Vocabulary vocabulary)
{
    private readonly EventKind? _calving = vocabulary.Calving;

    /// <summary>The quantity "days since the last"; a key of made-up animals too.</summary>
    public sealed record AgoKey(int Kind, int Answer);

    /// <summary>The quantity "days since she was last in the spell".</summary>
    public sealed record SpellKey(string Spell);

    /// <summary>The quantity "days since a date", which may be before or after.</summary>
    public sealed record DateKey(DateReference Date);

    /// <summary>The quantity "age in days".</summary>
    public sealed record AgeKey;

    /// <summary>The quantity "calvings so far".</summary>
    public sealed record ParityKey;

    /// <summary>Her age.</summary>
    public int Age => quantities.Number(new AgeKey(), age => [Bound.Above(age, 0, null)]);

    /// <summary>Her parity.</summary>
    public int Parity => quantities.Number(new ParityKey(), parity => [Bound.Above(parity, 0, null)]);

    /// <summary>Days since a date. How far dates lie apart is known where they are.</summary>
    public int Since(DateReference date) => quantities.Number(
        new DateKey(date.Value is null ? date : date with { Name = null }), _ => []);

    /// <summary>An event, a measure's or test's result, or (with its place) one answer of a test.</summary>
    public Happening Of(Kind kind, int answer = -1)
    {
        var ago = quantities.Number(new AgoKey(kind.Id, answer), ago => answer < 0
            ? [Bound.Above(ago, 0, null)]
            : [Bound.Above(ago, 0, null), Bound.Longer(ago, Of(kind).Ago, default, null)]);
        return new Happening(kind.Id, ago, (kind as EventKind)?.NotBeforeAge, kind.Id == _calving?.Id);
    }

    /// <summary>A day in a spell. On the days of its starting and ending events she is in it.</summary>
    public Happening Of(Spell spell)
    {
        var (from, until) = (Of(spell.From).Ago, Of(spell.Until).Ago);
        var ago = quantities.Number(new SpellKey(spell.Name), ago =>
            [Bound.Above(ago, 0, null), Bound.Longer(from, ago, default, null), Bound.Longer(until, ago, default, null)]);
        return new Happening(-1, ago, null, false);
    }

    /// <summary>Whether both are of one declared kind, with whatever filter: on its own day the one counts from the other no more than from itself.</summary>
    public bool AreOfOneKind(Happening one, Happening other) =>
        one.Kind >= 0 && other.Kind >= 0 && vocabulary.ById[one.Kind].Declaration.Id == vocabulary.ById[other.Kind].Declaration.Id;

    /// <summary>It happened.</summary>
    public Together Happened(Happening what, Condition from)
    {
        var happened = Together.Of(
            Bound.Below(what.Ago, Quantities.Never - 1, from),
            Bound.Longer(Age, what.Ago, what.NotBefore is { } age ? DaysLong.Of(age) : default, from));
        return what.IsCalving ? happened.And(Together.Of(Bound.Above(Parity, 1, from))) : happened;
    }

    /// <summary>It never happened.</summary>
    public Together Never(Happening what, Condition from)
    {
        var never = Together.Of(Bound.Above(what.Ago, Quantities.Never, from));
        return what.IsCalving ? never.And(Together.Of(Bound.Below(Parity, 0, from))) : never;
    }

    /// <summary>She is a cow.</summary>
    public Together Cow(Condition from)
    {
        var parity = Together.Of(Bound.Above(Parity, 1, from));
        return _calving is null ? parity : Happened(Of(_calving), from).And(parity);
    }

    /// <summary>She is a heifer. (Who is judged is female.)</summary>
    public Together Heifer(Condition from)
    {
        var parity = Together.Of(Bound.Below(Parity, 0, from));
        return _calving is null ? parity : Never(Of(_calving), from).And(parity);
    }
}
