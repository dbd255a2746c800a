namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>What is true of her without a date. A fact that is not on record is neither so nor otherwise.</summary>
internal sealed class FactClaims(Quantities quantities, Happenings happenings)
{
    private const string Yes = "yes";
    private const string No = "no";

    /// <summary>The quantity (or text) "this fact".</summary>
    public sealed record FactKey(int Fact);

    /// <summary>The text "whether this fact is on record".</summary>
    public sealed record RecordedKey(int Fact);

    /// <summary>The quantity "per cent of a fact", of another quantity.</summary>
    public sealed record ShareKey(int Quantity, int Of);

    /// <summary>The quantity "the least share of the herd's top that she is in", above 0 to 100.</summary>
    public sealed record StandingKey(int Fact, HerdGroup Group, bool WithValue);

    public Claim Of(FactNumberCondition condition, bool isTrue) =>
        Known(condition.Fact, condition).And(Compare(quantities.Number(new FactKey(condition.Fact.Id), _ => []), condition.Test, condition, isTrue));

    public Claim Of(FactTextCondition condition, bool isTrue)
    {
        var fact = condition.Fact;
        IReadOnlyList<string>? domain = fact.Type == FactType.OneOf ? [.. fact.Values.Select(NameFolding.Fold)] : null;
        return Text(fact, domain, [.. condition.Values.Select(NameFolding.Fold)], condition.IsNot == isTrue, condition);
    }

    public Claim Of(FactDateCondition condition, bool isTrue) => Text(
        condition.Fact, null, [condition.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)], condition.IsNot == isTrue, condition);

    public Claim Of(RecordedCondition condition, bool isTrue) => Recorded(condition.Fact, condition.IsNot != isTrue, condition);

    public Claim Of(ParityCondition condition, bool isTrue)
    {
        var stretch = NumberStretch.Of(condition.Test);
        return isTrue
            ? Parity(stretch, condition)
            : Parity(new NumberStretch(0, stretch.Low - 1), condition).Or(Parity(new NumberStretch(stretch.High + 1, double.PositiveInfinity), condition));
    }

    public Claim Of(StandingCondition condition, bool isTrue)
    {
        var standing = quantities.Number(
            new StandingKey(condition.Fact.Id, condition.Group, condition.WithValue), number => [Bound.Above(number, 0, null), Bound.Below(number, 100, null)]);
        return Known(condition.Fact, condition).And(Claim.Of(condition.Not != isTrue
            ? Bound.Below(standing, condition.Percent, condition)
            : Bound.Above(standing, Math.BitIncrement(condition.Percent), condition)));
    }

    /// <summary>A number compared with limits, or with shares of an amount that is true of her.</summary>
    public Claim Compare(int quantity, NumberTest test, Condition from, bool isTrue)
    {
        var stretch = NumberStretch.Of(test);
        var (low, high) = (test.Low.PercentOf, test.High.PercentOf);
        if (low is null && high is null)
        {
            return isTrue ? stretch.Holds(quantity, from) : stretch.Fails(quantity, from);
        }

        // Shares of one amount can be held against each other; anything else is not followed.
        if (low != high || low!.Type != FactType.Amount)
        {
            return Claim.Anything;
        }

        var share = quantities.Number(new ShareKey(quantity, low.Id), _ => []);
        return Known(low, from).And(isTrue ? stretch.Holds(share, from) : stretch.Fails(share, from));
    }

    private Claim Parity(NumberStretch stretch, Condition from)
    {
        if (stretch.High < Math.Max(0, stretch.Low) || double.IsPositiveInfinity(stretch.Low))
        {
            return Claim.Never;
        }

        var claim = stretch.Holds(happenings.Parity, from);
        return stretch.Low >= 1 ? claim.And(new Claim([happenings.Cow(from)]))
            : stretch.High == 0 ? claim.And(new Claim([happenings.Heifer(from)])) : claim;
    }

    private Claim Text(Fact fact, IReadOnlyList<string>? domain, IReadOnlyList<string> values, bool isNot, Condition from) =>
        Known(fact, from).And(Claim.Of(new OneOf(quantities.Text(new FactKey(fact.Id), domain), values, isNot, from)));

    private Claim Known(Fact fact, Condition from) => Recorded(fact, true, from);

    private Claim Recorded(Fact fact, bool isRecorded, Condition from) =>
        Claim.Of(new OneOf(quantities.Text(new RecordedKey(fact.Id), [Yes, No]), [isRecorded ? Yes : No], false, from));
}
