namespace Byrelaw.Records.Animals;

/// <summary>One fact's cells, in the order of the file.</summary>
internal sealed class FactStage(Fact fact, int cell, bool isDoubled)
{
    private readonly List<FactState> _states = [];
    private readonly List<double> _numbers = [];
    private readonly List<string?> _texts = [];
    private readonly SpellingTable _known = new();
    private readonly List<string> _knownTexts = [];

    private bool IsNumber => fact.Type is FactType.Number or FactType.Amount or FactType.Date;

    /// <summary>Reads the cell of the next animal.</summary>
    /// <param name="row">Her row.</param>
    /// <param name="cut">The cell that may be cut; -1 for none.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public void Read(CsvRows row, int cut, List<Diagnostic> problems)
    {
        if (isDoubled || (cut >= 0 && cut == cell))
        {
            Add(FactState.Unreadable);
            return;
        }

        var text = row.Cell(cell);
        if (text.IsEmpty)
        {
            Add(FactState.Missing);
        }
        else if (Problem(row, text) is { } problem)
        {
            problems.Add(problem);
            Add(FactState.Unreadable);
        }
    }

    /// <summary>Notes that the next animal's row could not be read.</summary>
    public void ReadNothing() => Add(cell < 0 && !isDoubled ? FactState.Missing : FactState.Unreadable);

    /// <summary>Makes every cell one that cannot be read.</summary>
    public void ForgetAll()
    {
        for (var row = 0; row < _states.Count && (cell >= 0 || isDoubled); row++)
        {
            _states[row] = FactState.Unreadable;
        }
    }

    /// <summary>Makes what two rows say of one animal unreadable where they disagree.</summary>
    public void Merge(int first, int second)
    {
        var agree = _states[first] == _states[second]
            && (IsNumber ? _numbers[first].Equals(_numbers[second]) : _texts[first] == _texts[second]);
        if (!agree)
        {
            _states[first] = FactState.Unreadable;
        }
    }

    /// <summary>The column in the order of the herd.</summary>
    public FactColumn InOrder(int[] order) => new()
    {
        States = [.. order.Select(row => _states[row])],
        Numbers = IsNumber ? [.. order.Select(row => _numbers[row])] : [],
        Texts = IsNumber ? [] : [.. order.Select(row => _texts[row])],
    };

    private void Add(FactState state, double number = 0, string? text = null)
    {
        _states.Add(state);
        if (IsNumber)
        {
            _numbers.Add(number);
        }
        else
        {
            _texts.Add(text);
        }
    }

    /// <summary>Adds what the cell says, or says what is wrong with it.</summary>
    private Diagnostic? Problem(CsvRows row, ReadOnlySpan<byte> text)
    {
        switch (fact.Type)
        {
            case FactType.OneOf:
                return OneOf(row, text);
            case FactType.Number:
                if (!NumberCell.TryRead(text, out var number))
                {
                    return FactProblems.NotANumber(row.Text(), cell, fact);
                }

                Add(FactState.Known, number);
                return null;
            case FactType.Amount:
                return Amount(row, text);
            case FactType.Date:
                if (!DateCell.TryRead(text, out var day))
                {
                    return RecordDateProblems.NotADate(row.Text(), cell);
                }

                Add(FactState.Known, day);
                return null;
            case FactType.Identity:
                return Identity(row, text);
            default:
                Add(FactState.Known, text: Encoding.UTF8.GetString(text));
                return null;
        }
    }

    private Diagnostic? OneOf(CsvRows row, ReadOnlySpan<byte> text)
    {
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

        Add(FactState.Known, text: _knownTexts[place]);
        return null;
    }

    private Diagnostic? Amount(CsvRows row, ReadOnlySpan<byte> text)
    {
        if (!MeasuredCell.TryRead(text, out var bound, out var number, out var unitText) || bound != MeasureBound.Exact)
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

        if (number < 0 && declared.Quantity != Quantity.Temperature)
        {
            return ValueProblems.Negative(row.Text(), cell, fact.Name);
        }

        Add(FactState.Known, number);
        return null;
    }

    private Diagnostic? Identity(CsvRows row, ReadOnlySpan<byte> text)
    {
        var identity = Encoding.UTF8.GetString(text);
        switch (Iso11784.Concerns(identity) ? Iso11784.Flaw(identity) : IdentityFlaw.None)
        {
            case IdentityFlaw.TestCode or IdentityFlaw.NoCode:
                return FactProblems.IdentityCode(row.Text(), cell);
            case IdentityFlaw.TooLarge:
                return FactProblems.IdentityTooLarge(row.Text(), cell);
            default:
                Add(FactState.Known, text: identity);
                return null;
        }
    }
}
