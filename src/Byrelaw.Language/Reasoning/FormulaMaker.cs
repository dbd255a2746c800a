using Byrelaw.Language.Reasoning.Claims;

namespace Byrelaw.Language.Reasoning;

/// <summary>Makes the conditions of one rulebook ready to be reasoned about.</summary>
internal sealed class FormulaMaker
{
    private readonly Happenings _happenings;
    private readonly WindowClaims _windows;
    private readonly TimeClaims _times;
    private readonly CountClaims _counts;
    private readonly FactClaims _facts;
    private readonly LookupClaims _lookups;
    private readonly SpellClaims _spells;
    private readonly Formula[] _defines;
    private readonly Formula[] _negatedDefines;
    private readonly SaidAlike? _alike;
    private readonly bool _isSure;
    private readonly Dictionary<(string Text, bool IsNegated), Formula> _byText = [];

    // Whether what is being made is wanted false.
    private bool _isNegated;

    /// <summary>Makes the defines of a rulebook ready.</summary>
    /// <param name="rulebook">As read.</param>
    /// <param name="isShared">Whether all that says the same is one formula: a search is short then, and what it blames may stand elsewhere.</param>
    /// <param name="isSure">Whether a formula holds only where its condition is true, and not where it is not known because nothing was found.</param>
    public FormulaMaker(Rulebook rulebook, bool isShared = false, bool isSure = false)
    {
        _isSure = isSure;
        Quantities = new Quantities();
        _happenings = new Happenings(Quantities, rulebook.Vocabulary);
        _windows = new WindowClaims(Quantities, _happenings);
        _times = new TimeClaims(_happenings);
        _counts = new CountClaims(Quantities, _happenings, _windows);
        _facts = new FactClaims(Quantities, _happenings);
        _lookups = new LookupClaims(Quantities, _happenings, _windows, _facts);
        _spells = new SpellClaims(_happenings, _windows);
        _defines = new Formula[rulebook.Defines.Length];
        _negatedDefines = isSure ? new Formula[rulebook.Defines.Length] : _defines;
        _alike = isShared ? new SaidAlike(rulebook) : null;
        for (var i = 0; i < _defines.Length; i++)
        {
            var define = rulebook.Defines[i];
            _defines[i] = _alike?.Define(i) is { } same && same < i ? _defines[same] : define.IsBroken ? Formula.Unclear : Make(define.Condition);
            if (isSure)
            {
                _isNegated = true;
                _negatedDefines[i] = _alike?.Define(i) is { } alike && alike < i ? _negatedDefines[alike] : define.IsBroken ? Formula.Unclear : Make(define.Condition);
                _isNegated = false;
            }
        }
    }

    /// <summary>Her age, among them.</summary>
    public int Age => _happenings.Age;

    /// <summary>What the conditions speak of.</summary>
    public Quantities Quantities { get; }

    /// <summary>A defined condition.</summary>
    public Formula OfDefine(int index) => _defines[index];

    /// <summary>Whether an animal is of a sort.</summary>
    /// <param name="audience">Which sort; everyone who is judged is female.</param>
    /// <param name="named">For <see cref="Audience.Named"/>.</param>
    /// <param name="at">The condition that says so, in messages.</param>
    public Formula Make(Audience audience, NamedCondition? named, Condition at) => audience switch
    {
        Audience.Cows => new SingleCondition(new Claim([_happenings.Cow(at)]), new Claim([_happenings.Heifer(at)])),
        Audience.Heifers => new SingleCondition(new Claim([_happenings.Heifer(at)]), new Claim([_happenings.Cow(at)])),
        Audience.Named when named is not null => Make(named),
        Audience.Named => Formula.Unclear,
        _ => new SingleCondition(Claim.Anything, Claim.Never),
    };

    /// <summary>A condition.</summary>
    public Formula Make(Condition condition)
    {
        if (_alike?.TextOf(condition) is not { } text)
        {
            return Made(condition);
        }

        var key = (text, _isNegated && _isSure);
        if (!_byText.TryGetValue(key, out var formula))
        {
            _byText[key] = formula = Made(condition);
        }

        return formula;
    }

    private Formula Made(Condition condition) => condition switch
    {
        NamedCondition { Index: < 0 } => Formula.Unclear,
        NamedCondition named => named.Not ? Formula.Not(Define(named.Index, !_isNegated)) : Define(named.Index, _isNegated),
        ListCondition list => Make(list),
        CountCondition count => Leaf(isTrue => _counts.Of(count, isTrue)),
        TimeSinceCondition since => Leaf(isTrue => _times.Of(since, isTrue)),
        AgeCondition age => Leaf(isTrue => _times.Of(age, isTrue)),
        ParityCondition parity => Leaf(isTrue => _facts.Of(parity, isTrue)),
        FactNumberCondition number => MayBeMissing(Leaf(isTrue => _facts.Of(number, isTrue)), Formula.Unclear),
        // What it says of values that its file does not see is not known.
        FactTextCondition { Doubted.IsEmpty: false } => Formula.Unclear,
        FactTextCondition text => MayBeMissing(Leaf(isTrue => _facts.Of(text, isTrue)), Formula.Unclear),
        FactDateCondition date => MayBeMissing(Leaf(isTrue => _facts.Of(date, isTrue)), Formula.Unclear),
        RecordedCondition recorded => Leaf(isTrue => _facts.Of(recorded, isTrue)),
        StandingCondition standing => MayBeMissing(Leaf(isTrue => _facts.Of(standing, isTrue)), Formula.Unclear),
        MeasuredCondition { Aggregate: Aggregate.Change } change => MayBeMissing(Leaf(isTrue => _lookups.Of(change, isTrue)), Formula.Unclear),
        MeasuredCondition measured => MayBeMissing(Leaf(isTrue => _lookups.Of(measured, isTrue)), Found(measured.Measure, measured)),
        TestCondition test => MayBeMissing(Leaf(isTrue => _lookups.Of(test, isTrue)), Found(test.Test, test)),
        MobMeasuredCondition mob => MayBeMissing(Leaf(isTrue => _lookups.Of(mob, isTrue)), Formula.Unclear),
        MobCountCondition mob => MayBeMissing(Leaf(isTrue => _lookups.Of(mob, isTrue)), Formula.Unclear),
        SpellCondition spell => Leaf(isTrue => _spells.Of(spell, isTrue)),
        ApartCondition => Formula.Unclear,
        // Of how many results there are, and of each of them, nothing is reckoned.
        SeriesCondition => Formula.Unclear,
        // Which mobs there are no rule says.
        InMobCondition => Formula.Unclear,
        BrokenCondition => Formula.Unclear,
        _ => throw MissingKind.Of(condition, nameof(FormulaMaker)),
    };

    /// <summary>That something can lie in a condition's windows; null for a condition that counts nothing and looks nothing up.</summary>
    public Formula? Reach(Condition condition) => condition switch
    {
        CountCondition count => Reach(count.Windows, condition, [.. count.Counted.Select(one => (one.Kind, one.Answer))]),
        ApartCondition apart => Reach(apart.Windows, condition, [.. apart.Counted.Select(one => (one.Kind, one.Answer))]),
        MeasuredCondition measured => Reach(measured.Windows, condition, (measured.Measure, -1)),
        TestCondition test => Reach(test.Windows, condition, (test.Test, -1)),
        _ => null,
    };

    private SingleCondition Reach(ImmutableArray<Window> windows, Condition from, params (Kind Kind, int Answer)[] kinds)
    {
        var some = Claim.Any(kinds.Where(kind => WindowClaims.CanHold(windows, kind.Kind))
            .Select(kind => _windows.Some(_happenings.Of(kind.Kind, kind.Answer), windows, from)));
        return new SingleCondition(some, Claim.Anything);
    }

    private Formula Make(ListCondition list)
    {
        var (before, isNone) = (_isNegated, list.Kind == ListKind.NoneOf);
        _isNegated ^= isNone;
        var atLeast = new AtLeast(list.AtLeast, [.. list.Items.Select(Make)]);
        _isNegated = before;
        return isNone ? Formula.Not(atLeast) : atLeast;
    }

    private Formula Define(int index, bool isNegated) => isNegated ? _negatedDefines[index] : _defines[index];

    /// <summary>Of what is not known where nothing was found: to be true, or false where it is wanted false, something must have been.</summary>
    private Formula MayBeMissing(Formula leaf, Formula found) =>
        !_isSure ? leaf : _isNegated ? Formula.Any(leaf, Formula.Not(found)) : Formula.All(leaf, found);

    /// <summary>That there is a result in the windows.</summary>
    private Formula Found(Kind kind, Condition condition) => !_isSure ? Formula.Unclear : WindowClaims.CanHold(condition.Windows, kind)
        ? new SingleCondition(_windows.Some(_happenings.Of(kind), condition.Windows, condition), _windows.None(_happenings.Of(kind), condition.Windows, condition))
        : new SingleCondition(Claim.Never, Claim.Anything);

    private static SingleCondition Leaf(Func<bool, Claim> claim) => new(claim(true), claim(false));
}
