namespace Byrelaw.Records.Animals;

/// <summary>One fact's cells, in the order of the file.</summary>
internal sealed class FactStage(Fact fact, int cell, bool isDoubled)
{
    private readonly List<FactState> _states = [];
    private readonly List<double> _numbers = [];
    private readonly List<string?> _texts = [];
    private readonly FactReader _reader = new(fact, cell);

    /// <summary>Lines whose value no cow can have.</summary>
    public List<int> ImplausibleLines { get; } = [];

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
        else if (_reader.Read(row, text, out var number, out var said) is { } problem)
        {
            problems.Add(problem);
            Add(FactState.Unreadable);
        }
        else if (fact.Plausible is { } plausible && (number < plausible.From || number > plausible.To))
        {
            problems.Add(ValueProblems.Implausible(row.Text(), cell, fact.Name, plausible, fact.Unit));
            ImplausibleLines.Add(row.Line);
            Add(FactState.Unreadable);
        }
        else
        {
            Add(FactState.Known, number, said);
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

    /// <summary>Puts what two rows say of one animal together: a blank cell says nothing.</summary>
    public void Unite(int first, int second)
    {
        if (_states[first] == FactState.Missing)
        {
            _states[first] = _states[second];
            if (IsNumber)
            {
                _numbers[first] = _numbers[second];
            }
            else
            {
                _texts[first] = _texts[second];
            }
        }
        else if (_states[second] != FactState.Missing)
        {
            Merge(first, second);
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
        IsThere = cell >= 0 || isDoubled,
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
}
