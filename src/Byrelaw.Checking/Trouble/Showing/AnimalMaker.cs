using Byrelaw.Language.Reasoning.Claims;

namespace Byrelaw.Checking.Trouble.Showing;

/// <summary>
/// Makes up an animal of whom given things hold, with the fewest days and the lowest numbers that will do. It follows what is
/// commonest and leaves the rest: whether she is as wanted, the judge says.
/// </summary>
internal sealed class AnimalMaker(Vocabulary vocabulary, Quantities quantities, LocalDate day)
{
    private const string Number = "1";
    private const int GrownUp = 5 * 365;
    private readonly Consistency _consistency = new(quantities);

    /// <summary>The animal; null where none was found.</summary>
    public MadeUpHerd? Make(Together wanted)
    {
        if (DaysSinceDates(wanted) is not { } dates || _consistency.Numbers([.. wanted.Bounds, .. dates]) is not { } numbers)
        {
            return null;
        }

        var rows = ImmutableArray.CreateBuilder<MadeUpRow>();
        var facts = ImmutableDictionary<string, string>.Empty;
        var age = (double)GrownUp;
        foreach (var (quantity, value) in numbers.OrderByDescending(number => number.Value))
        {
            switch (quantities.KeyOf(quantity))
            {
                case Happenings.AgeKey:
                    age = wanted.Bounds.Any(bound => bound.X == quantity && bound.Y == Quantities.Nought) ? value : Math.Max(value, GrownUp);
                    break;
                case Happenings.AgoKey key when value < Quantities.Never && Result(key, wanted, numbers) is { } result:
                    rows.Add(Row(vocabulary.ById[key.Kind], value, result));
                    break;
                case Happenings.SpellKey key when value < Quantities.Never && vocabulary.Spells.FirstOrDefault(spell => spell.Name == key.Spell) is { } spell:
                    rows.Add(Row(spell.From, value + 1, ""));
                    rows.Add(Row(spell.Until, value, ""));
                    break;
                case Happenings.ParityKey:
                    facts = facts.SetItem("parity", Written(value));
                    break;
                case FactClaims.FactKey key:
                    facts = facts.SetItem(vocabulary.Facts[key.Fact].Name, Written(value));
                    break;
                default:
                    break;
            }
        }

        foreach (var text in wanted.Texts.Select(text => text.Text).Distinct())
        {
            if (quantities.KeyOfText(text) is FactClaims.FactKey key && Allowed(text, wanted) is { } value)
            {
                facts = facts.SetItem(vocabulary.Facts[key.Fact].Name, vocabulary.Facts[key.Fact].Values.FirstOrDefault(one => NameFolding.Fold(one) == value, value));
            }
        }

        var animal = new MadeUpAnimal(Number) { Born = LocalDatePattern.Iso.Format(day.PlusDays(-(int)age)), Facts = facts };
        return new MadeUpHerd([animal], [.. rows.Distinct()], day);
    }

    private MadeUpRow Row(Kind kind, double ago, string result) =>
        new(day.PlusDays(-(int)ago), Number, kind.Declaration.Name, result, result.Length > 0 && kind is MeasureKind { Unit: { } unit } ? unit.Symbol : "")
        {
            Details = kind.Filter is { } filter ? FittingDetails.For(filter) : [],
        };

    /// <summary>Empty for an event; null for a result of which nothing is wanted.</summary>
    private string? Result(Happenings.AgoKey key, Together wanted, Dictionary<int, double> numbers)
    {
        switch (vocabulary.ById[key.Kind])
        {
            case EventKind:
                return "";
            case TestKind test when key.Answer >= 0:
                return test.Answers[key.Answer];
            case TestKind test:
                var text = wanted.Texts.Select(one => one.Text).FirstOrDefault(one => quantities.KeyOfText(one) is LookupClaims.LatestKey { } latest && latest.Kind == key.Kind, -1);
                return text >= 0 && Allowed(text, wanted) is { } answer ? test.Answers.First(one => NameFolding.Fold(one) == answer) : null;
            case MeasureKind measure:
                var value = numbers.Where(number => quantities.KeyOf(number.Key) is LookupClaims.LatestKey latest && latest.Kind == key.Kind).Select(number => (double?)number.Value).FirstOrDefault();
                return value is { } found && double.IsFinite(found) ? Written(found) : measure.Scale is { } scale ? Written(scale.From) : null;
            default:
                return null;
        }
    }

    private string? Allowed(int text, Together wanted)
    {
        IEnumerable<string>? left = quantities.DomainOf(text);
        foreach (var demand in wanted.Texts.Where(demand => demand.Text == text))
        {
            left = demand.IsNot ? left?.Except(demand.Values) : left?.Intersect(demand.Values) ?? demand.Values;
        }

        return left?.FirstOrDefault();
    }

    /// <summary>How long ago the dates are that are spoken of; null where one is not set.</summary>
    private List<Bound>? DaysSinceDates(Together wanted)
    {
        var known = new List<Bound>();
        foreach (var quantity in wanted.Bounds.SelectMany(bound => new[] { bound.X, bound.Y }).Distinct())
        {
            if (quantities.KeyOf(quantity) is Happenings.DateKey key)
            {
                if (key.Date.Value is not { } date)
                {
                    return null;
                }

                var days = Period.DaysBetween(date, day);
                known.Add(Bound.Above(quantity, days, null));
                known.Add(Bound.Below(quantity, days, null));
            }
        }

        return known;
    }

    private static string Written(double value) => Math.Round(value, 3).ToString(CultureInfo.InvariantCulture);
}
