using Byrelaw.Workshop.Comparing.Mixing;

namespace Byrelaw.Workshop.Comparing;

/// <summary>Two rulebooks, and all that differs between them.</summary>
public sealed class RulebookComparison
{
    internal RulebookComparison(Rulebook old, Rulebook @new, Pairs pairs, ImmutableArray<Difference> differences)
    {
        Old = old;
        New = @new;
        Pairs = pairs;
        Differences = differences;
    }

    /// <summary>The one that things changed from.</summary>
    public Rulebook Old { get; }

    /// <summary>The one they changed to.</summary>
    public Rulebook New { get; }

    /// <summary>Words, defines, rules by list, preferences, waivers, records, programme; each by name.</summary>
    public ImmutableArray<Difference> Differences { get; }

    /// <summary>Whether the two say the same; then they have one fingerprint.</summary>
    public bool IsEmpty => Differences.IsEmpty;

    internal Pairs Pairs { get; }

    /// <summary>Compares. Neither is changed; files and places do not count.</summary>
    public static RulebookComparison Of(Rulebook old, Rulebook @new)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(@new);
        var pairs = Pairs.Of(old, @new);
        return new RulebookComparison(old, @new, pairs, [.. Differing.In(pairs, old, @new)]);
    }

    /// <summary>The name that a rule or preference of the old rulebook goes by in the new one; its own where it is gone.</summary>
    public string NameNow(string oldName) => Pairs.RuleNow(oldName);

    /// <summary>The old rulebook with some of the differences, and not the others: for asking what one of them does.</summary>
    /// <param name="with">Some of <see cref="Differences"/>. Words go together: one of them brings all.</param>
    /// <returns>A rulebook to judge by. Its rules go by their new names; what words it needs it has. Where a condition cannot be
    /// said in the words it would have, its rule is broken.</returns>
    public Rulebook Mix(IReadOnlyCollection<Difference> with) => new Mixer(this, with).Mix();
}
