using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Events;

/// <summary>
/// Rows of one kind that say beside it that they may be another: a heat with a sire, with the method <c>inseminated</c>, with the value <c>AI</c>, or with a detail <c>served</c>. The other kind is then in doubt
/// for her on that day. What holds a cow back by itself, and what ends a pregnancy, has fathers and methods of its own.
/// </summary>
internal sealed class MayBeAnother(Vocabulary vocabulary)
{
    private readonly Kind? _mating = vocabulary.FindKind("mating");
    private readonly (HintedWord Word, Kind Kind)[] _hints = [.. FloorHints.Of(vocabulary).Select(hint => (HintedWord.Of(hint.Word), hint.Kind))];

    /// <summary>The kind that a text in the value of an event may be; null for none.</summary>
    public Kind? ByValue(string value, Kind kind) => Takes(kind)
        && (vocabulary.FindKind(value) is { } named && FloorHeadings.Asks(named) ? named : Hinted(value)) is { } other && other.Id != kind.Id ? other : null;

    /// <summary>The kind that has a detail which this one has not, and what stands there; null for none.</summary>
    public Kind? ByStrangeDetail(DetailColumn column, string text, Kind kind) =>
        _mating is not null && kind.Id != _mating.Id && kind is EventKind && Takes(kind) && column.DetailOf[_mating.Id] is >= 0 and var place
        && (_mating.Details[place] is not { Type: FactType.OneOf } detail || detail.Values.Any(value => NameFolding.Fold(value) == NameFolding.Fold(text))) ? _mating : null;

    /// <summary>The kind that a detail of this one may tell of, by its name; null for none, and where it says no.</summary>
    public Kind? ByOwnDetail(string name, string text, Kind kind) =>
        Takes(kind) && FloorHeadings.MayBe(name, vocabulary) is { } other && other.Id != kind.Id && !FloorHeadings.SaysNone(text) ? other : null;

    private Kind? Hinted(string text)
    {
        var said = HintedWord.Of(text);
        return Array.Find(_hints, hint => hint.Word.StandsIn(said)).Kind;
    }

    private static bool Takes(Kind kind) => kind is EventKind { Effect: HerdEffect.None, IsMobMove: false } && !FloorHints.Knows(kind) && !FloorHeadings.Asks(kind) && NameFolding.Fold(kind.Name) is not ("egg collection" or "flushing");
}
