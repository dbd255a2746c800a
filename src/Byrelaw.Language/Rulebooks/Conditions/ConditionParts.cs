namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>The parts of one condition, those of its windows told apart; not those of conditions written inside it, nor of a define it names.</summary>
public sealed class ConditionParts
{
    private readonly ImmutableArray<Kind>.Builder _kinds = ImmutableArray.CreateBuilder<Kind>();
    private readonly ImmutableArray<Kind>.Builder _windowKinds = ImmutableArray.CreateBuilder<Kind>();
    private readonly ImmutableArray<Fact>.Builder _facts = ImmutableArray.CreateBuilder<Fact>();
    private readonly ImmutableArray<DateReference>.Builder _dates = ImmutableArray.CreateBuilder<DateReference>();
    private readonly ImmutableArray<ConditionNumber>.Builder _numbers = ImmutableArray.CreateBuilder<ConditionNumber>();

    /// <summary>Looks at a condition's parts.</summary>
    public ConditionParts(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        condition.With(new Looking(this));
    }

    /// <summary>The kinds of record that it looks at, in the order of reading; of a spell those that begin and end it.</summary>
    public ImmutableArray<Kind> Kinds => _kinds.ToImmutable();

    /// <summary>The kinds of record from which its windows run.</summary>
    public ImmutableArray<Kind> WindowKinds => _windowKinds.ToImmutable();

    /// <summary>The facts that it looks at, those of which a limit is a share among them.</summary>
    public ImmutableArray<Fact> Facts => _facts.ToImmutable();

    /// <summary>The days that it names.</summary>
    public ImmutableArray<DateReference> Dates => _dates.ToImmutable();

    /// <summary>Its numbers: limits first, then the lengths of its windows.</summary>
    public ImmutableArray<ConditionNumber> Numbers => _numbers.ToImmutable();

    private sealed class Looking(ConditionParts parts) : OtherParts
    {
        private bool _isInWindow;

        public override Condition? Item(Condition item) => item;

        public override Window? Window(Window window, int place)
        {
            _isInWindow = true;
            return base.Window(window, place);
        }

        public override Kind? Kind(Kind kind)
        {
            (_isInWindow ? parts._windowKinds : parts._kinds).Add(kind);
            return kind;
        }

        public override Fact? Fact(Fact fact)
        {
            parts._facts.Add(fact);
            return fact;
        }

        public override Spell? Spell(Spell spell)
        {
            (_isInWindow ? parts._windowKinds : parts._kinds).Add(spell.From);
            (_isInWindow ? parts._windowKinds : parts._kinds).Add(spell.Until);
            return spell;
        }

        public override DateReference Date(DateReference date)
        {
            parts._dates.Add(date);
            return date;
        }

        public override double Number(ConditionNumber number)
        {
            parts._numbers.Add(number);
            return number.Value;
        }
    }
}
