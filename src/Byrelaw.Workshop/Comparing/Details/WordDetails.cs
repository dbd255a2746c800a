using static Byrelaw.Workshop.Comparing.Details.RuleDetails;

namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>What differs between two declarations of one word.</summary>
internal static class WordDetails
{
    /// <summary>The difference of a pair; null for none.</summary>
    public static WordDifference? Difference<T>(Pair<T> pair, Func<T, string> name, Func<T, string> line, Func<T, T, IEnumerable<Detail>> between) where T : class
    {
        var (old, @new) = (pair.Old is { } a ? line(a) : null, pair.New is { } b ? line(b) : null);
        if (old == @new)
        {
            return null;
        }

        List<Detail> details = pair is { Old: { } was, New: { } now } ? [.. between(was, now)] : [];
        return new WordDifference(old, @new)
        {
            OldName = pair.Old is { } before ? name(before) : null,
            NewName = pair.New is { } after ? name(after) : null,
            Sameness = pair.Sameness,
            Details = old is null || @new is null ? [] : details.Count > 0 ? [.. details] : [new Detail(Aspect.Declaration, old, @new)],
        };
    }

    /// <summary>Of two kinds; nothing where only their declarations as a whole can be set side by side.</summary>
    public static IEnumerable<Detail> Between(Kind old, Kind @new)
    {
        IEnumerable<Detail>? own = (old, @new) switch
        {
            (EventKind a, EventKind b) when a.Effect == b.Effect && a.NotBeforeAge == b.NotBeforeAge => [],
            (MeasureKind a, MeasureKind b) when a.MolarMass == b.MolarMass && a.InTheYards == b.InTheYards => One(Aspect.Unit, Unit(a), Unit(b)),
            (TestKind a, TestKind b) when a.InTheYards == b.InTheYards => One(Aspect.Values, string.Join(", ", a.Answers), string.Join(", ", b.Answers)),
            _ => null,
        };
        return own is null ? [] : [.. own, .. Also(old.AlsoNames, @new.AlsoNames)];
    }

    /// <summary>Of two facts.</summary>
    public static IEnumerable<Detail> Between(Fact old, Fact @new) => old.Type != @new.Type ? [] :
    [
        .. One(Aspect.Unit, old.Unit?.Symbol, @new.Unit?.Symbol),
        .. One(Aspect.Values, string.Join(", ", old.Values), string.Join(", ", @new.Values)),
        .. Also(old.AlsoNames, @new.AlsoNames),
    ];

    private static IEnumerable<Detail> Also(IEnumerable<string> old, IEnumerable<string> @new) =>
        One(Aspect.FurtherNames, Names(old), Names(@new));

    private static string Names(IEnumerable<string> names) => string.Join(", ", names.Order(StringComparer.Ordinal));

    private static string Unit(MeasureKind measure) => measure.Unit is { } unit ? $"in {unit.Symbol}"
        : $"on scale {Language.Canonical.NumberText.Of(measure.Scale!.From)} to {Language.Canonical.NumberText.Of(measure.Scale.To)}";
}
