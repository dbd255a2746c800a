namespace Byrelaw.Language.Reasoning;

/// <summary>
/// Numbers (and texts) that conditions speak of, of one animal on the day of judging: days since her last calving, her age,
/// how many services in a window, her latest score. Two conditions that speak of the same quantity share its number.
/// </summary>
internal sealed class Quantities
{
    /// <summary>The quantity that is always nought.</summary>
    public const int Nought = 0;

    /// <summary>So many days ago or more means: never.</summary>
    public const double Never = 1_000_000;

    private readonly Dictionary<object, int> _numbers = [];
    private readonly List<List<Bound>> _relations = [[]];
    private readonly List<object?> _keys = [null];
    private readonly List<Family?> _families = [null];
    private readonly Dictionary<object, int> _texts = [];
    private readonly List<IReadOnlyList<string>?> _domains = [];
    private readonly List<object> _textKeys = [];

    /// <summary>How many there are, nought included.</summary>
    public int Count => _keys.Count;

    /// <summary>What holds of a quantity for every animal: against nought, and against single quantities that came before it.</summary>
    public List<Bound> RelationsOf(int quantity) => _relations[quantity];

    /// <summary>Those that a quantity belongs to; null for none.</summary>
    public Family? FamilyOf(int quantity) => _families[quantity];

    /// <summary>What a quantity is; null for nought.</summary>
    public object? KeyOf(int quantity) => _keys[quantity];

    /// <summary>What a text is.</summary>
    public object KeyOfText(int text) => _textKeys[text];

    /// <summary>The values that a text can have, folded; null for any.</summary>
    public IReadOnlyList<string>? DomainOf(int text) => _domains[text];

    /// <summary>The place of a quantity.</summary>
    /// <param name="key">What it is; equal keys are one quantity.</param>
    /// <param name="relations">Says, of a quantity seen for the first time, what always holds of it.</param>
    /// <param name="family">Those that it belongs to.</param>
    public int Number(object key, Func<int, IEnumerable<Bound>> relations, Family? family = null)
    {
        if (!_numbers.TryGetValue(key, out var number))
        {
            _numbers[key] = number = _keys.Count;
            _keys.Add(key);
            _relations.Add([]);
            _families.Add(family);
            _relations[number].AddRange(relations(number));
        }

        return number;
    }

    /// <summary>The place of a text.</summary>
    public int Text(object key, IReadOnlyList<string>? domain)
    {
        if (!_texts.TryGetValue(key, out var text))
        {
            _texts[key] = text = _textKeys.Count;
            _textKeys.Add(key);
            _domains.Add(domain);
        }

        return text;
    }
}
