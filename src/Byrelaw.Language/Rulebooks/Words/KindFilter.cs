namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>
/// Which entries of a kind are meant: <c>mating with method natural</c>. A kind with a filter is a kind of its own, with an id
/// and a run of its own: its entries are the days whose details surely fit, days whose details may fit are in doubt, and its
/// coverage is the kind's.
/// </summary>
/// <param name="Of">The declared kind.</param>
/// <param name="Tests">What its details must be; all of them.</param>
public sealed record KindFilter(Kind Of, ImmutableArray<DetailTest> Tests)
{
    /// <summary>As people write it: <c>with method natural</c>.</summary>
    public string Text => KindText.Of(this, word => word);

    /// <summary>The kind with this filter: it neither brings an animal into the herd nor takes her out of it.</summary>
    /// <param name="id">The place that it takes in <see cref="Vocabulary.ById"/>.</param>
    public Kind AsKind(int id)
    {
        var name = $"{Of.Name} {Text}";
        var kind = Of with { Name = name, AlsoNames = [], Id = id, Filter = this };
        return kind is EventKind happening ? happening with { Effect = HerdEffect.None, IsForGood = false } : kind;
    }

    /// <summary>The same filter of another kind, by the names of its details and their values; null where it says nothing there.</summary>
    public KindFilter? InWordsOf(Kind other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var tests = ImmutableArray.CreateBuilder<DetailTest>(Tests.Length);
        foreach (var test in Tests)
        {
            var place = 0;
            while (place < other.Details.Length && NameFolding.Fold(other.Details[place].Name) != NameFolding.Fold(test.Detail.Name))
            {
                place++;
            }

            if (place == other.Details.Length || !test.Fits(other.Details[place]))
            {
                return null;
            }

            tests.Add(test with { Detail = other.Details[place], Place = place });
        }

        return new KindFilter(other, tests.ToImmutable());
    }
}

/// <summary>What a detail of an entry must be.</summary>
/// <param name="Detail">Which.</param>
/// <param name="Place">Its place among the <see cref="Kind.Details"/>.</param>
public abstract record DetailTest(EntryDetail Detail, int Place)
{
    /// <summary>Whether the same can be asked of another detail: it has the same form, and the values asked for.</summary>
    internal virtual bool Fits(EntryDetail other) => other.Type == Detail.Type && other.Unit == Detail.Unit;
}

/// <summary><c>with method natural</c>, <c>with method not hand</c>, <c>with method one of ultrasound, blood</c>.</summary>
/// <param name="Detail">Which.</param>
/// <param name="Place">Its place.</param>
/// <param name="Values">Declared spellings, texts as written, or dates as year-month-day.</param>
/// <param name="IsNot">Whether it must be none of them.</param>
public sealed record DetailIs(EntryDetail Detail, int Place, ImmutableArray<string> Values, bool IsNot) : DetailTest(Detail, Place)
{
    internal override bool Fits(EntryDetail other) =>
        base.Fits(other) && (other.Type != FactType.OneOf || Values.All(value => other.Values.Any(known => NameFolding.Fold(known) == NameFolding.Fold(value))));
}

/// <summary><c>with step 0</c>, <c>with step at least 2</c>.</summary>
/// <param name="Detail">A number or an amount.</param>
/// <param name="Place">Its place.</param>
/// <param name="Test">In the detail's unit; without shares.</param>
/// <param name="IsNot">Whether it must not hold.</param>
public sealed record DetailNumber(EntryDetail Detail, int Place, NumberTest Test, bool IsNot) : DetailTest(Detail, Place);

/// <summary><c>with sire recorded</c>: something that can be read stands there.</summary>
/// <param name="Detail">Which.</param>
/// <param name="Place">Its place.</param>
public sealed record DetailRecorded(EntryDetail Detail, int Place) : DetailTest(Detail, Place);
