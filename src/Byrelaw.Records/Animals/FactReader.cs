using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Animals;

/// <summary>Reads cells of one fact, or of one detail of a kind. For one thread.</summary>
/// <param name="fact">What its value looks like.</param>
/// <param name="cell">Where it stands, for messages.</param>
internal sealed class FactReader(Fact fact, int cell)
{
    private readonly SpellingTable _known = new();
    private readonly List<string> _knownTexts = [];

    /// <summary>Reads a cell that is not blank; gives what is wrong with it, or null.</summary>
    /// <param name="row">The row.</param>
    /// <param name="text">The cell.</param>
    /// <param name="number">Numbers and amounts (in the declared unit), and dates as day numbers; else 0.</param>
    /// <param name="said">Texts, identities, and the declared spelling of one-of values; else null.</param>
    public Diagnostic? Read(CsvRows row, ReadOnlySpan<byte> text, out double number, out string? said)
    {
        (number, said) = (0, null);
        if (fact.Type is FactType.Text or FactType.Identity && Unreadable.Is(text))
        {
            return FactProblems.NotAText(row.Text(), cell, fact);
        }

        switch (fact.Type)
        {
            case FactType.OneOf:
                return OneOf(row, text, out said);
            case FactType.Number:
                return NumberCell.TryRead(text, out number) ? null : FactProblems.NotANumber(row.Text(), cell, fact);
            case FactType.Amount:
                return Amount(row, text, out number);
            case FactType.Date:
                var isDate = DateCell.TryRead(text, out var day);
                number = day;
                return isDate ? null : RecordDateProblems.NotADate(row.Text(), cell);
            case FactType.Identity:
                return Identity(row, text, out said);
            default:
                said = Encoding.UTF8.GetString(text);
                return null;
        }
    }

    private Diagnostic? OneOf(CsvRows row, ReadOnlySpan<byte> text, out string? said)
    {
        said = null;
        if (!_known.TryFind(text, out var place))
        {
            var folded = NameFolding.Fold(Encoding.UTF8.GetString(text));
            if (fact.Values.FirstOrDefault(value => NameFolding.Fold(value) == folded) is not { } declared)
            {
                return FactProblems.NotAValue(row.Text(), cell, fact, NearestName.OnlyOne(folded, fact.Values));
            }

            place = _knownTexts.Count;
            _knownTexts.Add(declared);
            _known.Set(text, place);
        }

        said = _knownTexts[place];
        return null;
    }

    private Diagnostic? Amount(CsvRows row, ReadOnlySpan<byte> text, out double number)
    {
        if (!MeasuredCell.TryRead(text, out var bound, out number, out var unitText) || bound != MeasureBound.Exact)
        {
            return FactProblems.NotANumber(row.Text(), cell, fact);
        }

        var declared = fact.Unit!;
        if (!unitText.IsEmpty)
        {
            var spelling = Encoding.UTF8.GetString(unitText);
            if (UnitTable.Find(spelling) is not { } unit)
            {
                return ValueProblems.UnknownUnit(row.Text(), cell, spelling, declared);
            }

            if (UnitConversion.Convert(number, unit, declared) is not { } converted)
            {
                return ValueProblems.OtherKindOfUnit(row.Text(), cell, spelling, fact.Name, declared);
            }

            number = converted;
        }

        return number < 0 && declared.Quantity != Quantity.Temperature ? ValueProblems.Negative(row.Text(), cell, fact.Name) : null;
    }

    private Diagnostic? Identity(CsvRows row, ReadOnlySpan<byte> text, out string? said)
    {
        said = Encoding.UTF8.GetString(text);

        // A sign that somebody could not read is no part of a tag, nor is a word for not knowing it a tag.
        if (NotKnownCell.Is(text))
        {
            return FactProblems.NotAText(row.Text(), cell, fact);
        }

        return (Iso11784.Concerns(said) ? Iso11784.Flaw(said) : IdentityFlaw.None) switch
        {
            IdentityFlaw.TestCode or IdentityFlaw.NoCode => FactProblems.IdentityCode(row.Text(), cell),
            IdentityFlaw.TooLarge => FactProblems.IdentityTooLarge(row.Text(), cell),
            _ => null,
        };
    }
}
