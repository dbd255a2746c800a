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
    private readonly SaidAlike? _alike;
    private readonly Dictionary<string, Formula> _byText = new(StringComparer.Ordinal);

    /// <summary>Makes the defines of a rulebook ready.</summary>
    /// <param name="rulebook">As read.</param>
    /// <param name="isShared">Whether all that says the same is one formula: a search is short then, and what it blames may stand elsewhere.</param>
    public FormulaMaker(Rulebook rulebook, bool isShared = false)
    {
        Quantities = new Quantities();
        _happenings = new Happenings(Quantities, rulebook.Vocabulary);
        _windows = new WindowClaims(Quantities, _happenings);
        _times = new TimeClaims(_happenings);
        _counts = new CountClaims(Quantities, _happenings, _windows);
        _facts = new FactClaims(Quantities, _happenings);
        _lookups = new LookupClaims(Quantities, _happenings, _windows, _facts);
        _spells = new SpellClaims(_happenings, _windows);
        _defines = new Formula[rulebook.Defines.Length];
        _alike = isShared ? new SaidAlike(rulebook) : null;
        for (var i = 0; i < _defines.Length; i++)
        {
            var define = rulebook.Defines[i];
            _defines[i] = _alike?.Define(i) is { } same && same < i ? _defines[same] : define.IsBroken ? Formula.Unclear : Make(define.Condition);
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

        if (!_byText.TryGetValue(text, out var formula))
        {
            _byText[text] = formula = Made(condition);
        }

        return formula;
    }

    private Formula Made(Condition condition) => condition switch
    {
        NamedCondition { Index: < 0 } => Formula.Unclear,
        NamedCondition named => named.Not ? Formula.Not(_defines[named.Index]) : _defines[named.Index],
        ListCondition list => Make(list, [.. list.Items.Select(Make)]),
        CountCondition count => Leaf(isTrue => _counts.Of(count, isTrue)),
        TimeSinceCondition since => Leaf(isTrue => _times.Of(since, isTrue)),
        AgeCondition age => Leaf(isTrue => _times.Of(age, isTrue)),
        ParityCondition parity => Leaf(isTrue => _facts.Of(parity, isTrue)),
        FactNumberCondition number => Leaf(isTrue => _facts.Of(number, isTrue)),
        FactTextCondition text => Leaf(isTrue => _facts.Of(text, isTrue)),
        FactDateCondition date => Leaf(isTrue => _facts.Of(date, isTrue)),
        RecordedCondition recorded => Leaf(isTrue => _facts.Of(recorded, isTrue)),
        StandingCondition standing => Leaf(isTrue => _facts.Of(standing, isTrue)),
        MeasuredCondition measured => Leaf(isTrue => _lookups.Of(measured, isTrue)),
        TestCondition test => Leaf(isTrue => _lookups.Of(test, isTrue)),
        MobMeasuredCondition mob => Leaf(isTrue => _lookups.Of(mob, isTrue)),
        MobCountCondition mob => Leaf(isTrue => _lookups.Of(mob, isTrue)),
        SpellCondition spell => Leaf(isTrue => _spells.Of(spell, isTrue)),
        BrokenCondition => Formula.Unclear,
        _ => throw MissingKind.Of(condition, nameof(FormulaMaker)),
    };

    /// <summary>That something can lie in a condition's windows; null for a condition that counts nothing and looks nothing up.</summary>
    public Formula? Reach(Condition condition) => condition switch
    {
        CountCondition count => Reach(count.Windows, condition, [.. count.Counted.Select(one => (one.Kind, one.Answer))]),
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

    private static Formula Make(ListCondition list, ImmutableArray<Formula> items)
    {
        var atLeast = new AtLeast(list.AtLeast, items);
        return list.Kind == ListKind.NoneOf ? Formula.Not(atLeast) : atLeast;
    }

    private static SingleCondition Leaf(Func<bool, Claim> claim) => new(claim(true), claim(false));
}
