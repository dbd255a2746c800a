using Byrelaw.Checking.Trouble.Showing;

namespace Byrelaw.Checking.Trouble;

/// <summary>One rulebook under study: its rules and defines made ready to be reasoned about.</summary>
internal sealed class Study
{
    private readonly CancellationToken _cancelled;

    /// <summary>Takes a rulebook.</summary>
    /// <param name="rulebook">As read.</param>
    /// <param name="cancelled">Once it is, every question is refused with an <see cref="OperationCanceledException"/>.</param>
    public Study(Rulebook rulebook, CancellationToken cancelled = default)
    {
        _cancelled = cancelled;
        Rulebook = rulebook;
        Maker = new FormulaMaker(rulebook);
        Search = new Search(Maker.Quantities);
        Show = new Show(this);
        Rules = [.. rulebook.Rules.Where(rule => !rule.IsBroken).Select(rule => RuleFormulas.Of(rule, Maker))];
    }

    public Rulebook Rulebook { get; }

    public FormulaMaker Maker { get; }

    public Search Search { get; }

    /// <summary>Shows a trouble on a made-up animal.</summary>
    public Show Show { get; }

    /// <summary>The rules that can be read, in the rulebook's order.</summary>
    public ImmutableArray<RuleFormulas> Rules { get; }

    /// <summary>Rules, preferences and defines that have been found to have trouble of their own: they are not held against others.</summary>
    public HashSet<string> Troubled { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether an animal can be as asked.</summary>
    public bool CanBe(params (Formula Formula, bool Holds)[] asked)
    {
        _cancelled.ThrowIfCancellationRequested();
        return Search.CanBe(asked);
    }
}
