using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Events;

/// <summary>
/// Rows of one kind that say beside it that they may be another: a heat with a sire, with the method <c>inseminated</c>, with the value <c>AI</c>, or with a detail <c>served</c>. The other kind is then in doubt
/// for her on that day. What holds a cow back by itself, and what ends a pregnancy, has fathers and methods of its own.
/// </summary>
internal sealed class MayBeAnother(Vocabulary vocabulary)
{
    private readonly Kind[] _services = [.. new[] { vocabulary.FindKind("mating"), vocabulary.Kinds.FirstOrDefault(kind => kind is EventKind { Marks: Marks.Transfer }) }.OfType<Kind>()];
    private readonly Kind? _mating = vocabulary.FindKind("mating");
    private readonly (HintedWord Word, Kind Kind)[] _hints = [.. FloorHints.Of(vocabulary).Select(hint => (HintedWord.Of(hint.Word), hint.Kind))];

    private readonly FloorSigns _signs = new(vocabulary);
    private readonly Kind? _test = vocabulary.FindKind("pregnancy test");
    private readonly Kind?[] _byName = [.. vocabulary.Kinds.Select(kind => FloorHints.TestOf(kind, vocabulary) ?? FloorHints.MatingAway(kind, vocabulary))];

    /// <summary>The pregnancy test, or the mating, that every row of a farm's own kind may be, by its name; null for none.</summary>
    public Kind? ByName(Kind kind) => kind.Id < _byName.Length ? _byName[kind.Id] : null;

    /// <summary>The kind that a text in the value of a row may be, where it is no value of its own; null for none.</summary>
    public Kind? ByValue(string value, Kind kind) => Takes(kind)
        && (kind is not EventKind ? _signs.In(value) : vocabulary.FindKind(value) is { } named && FloorHeadings.Asks(named) ? named : Hinted(value) ?? _signs.In(value)) is { } other && other.Id != kind.Id ? other : null;

    /// <summary>The kind that has a detail which this one has not, and what stands there; null for none.</summary>
    public Kind? ByStrangeDetail(DetailColumn column, string text, Kind kind) => !Takes(kind) ? null
        : Array.Find(_services, service => kind.Id != service.Id && column.DetailOf[service.Id] is >= 0 and var place
            && (service.Details[place] is not { Type: FactType.OneOf } detail || detail.Values.Any(value => NameFolding.Fold(value) == NameFolding.Fold(text))))
        ?? ByCell(column.Name, text, kind, "");

    /// <summary>The kind that a word in a cell for something else, such as a unit, may be; null for none.</summary>
    public Kind? ByCellBeside(string text, Kind kind) => Takes(kind) && (_signs.In(text) ?? _signs.AtTheEnd(text)) is { } other && other.Id != kind.Id ? other : null;

    /// <summary>Whether the name of a detail may tell of any.</summary>
    public bool IsHinted(string name) => NameFolding.Fold(name) is "sure" or "certain" or "straw" or "semen" or "recheck" or "days" or "weeks" or "age" || OfAName(name) is not null || Hinted(name) is not null;

    /// <summary>By a heading or the name of a detail; beside what is no calving, a calf is one inside her.</summary>
    private Kind? OfAName(string name) => FloorHeadings.MayBe(name, vocabulary) ?? (NameFolding.Fold(name) is "calf" or "calves" ? _test : null);

    /// <summary>The kind that a detail of this one may tell of, by its name; null for none, and where it says no. Beside a pregnancy test that found none it may be that it found one.</summary>
    public Kind? ByOwnDetail(string name, string text, Kind kind, string value) =>
        IsEmptyTest(kind, value) ? IsUnsure(name, text) || FloorHeadings.MayBe(name, vocabulary)?.Id == kind.Id && !FloorHeadings.SaysNone(text) ? kind : null
        : Takes(kind) && (OfAName(name) ?? (NameFolding.Fold(kind.Name) == "heat" ? Hinted(name) : IsOfSemen(name) ? _mating : null)) is { } other && other.Id != kind.Id && !FloorHeadings.SaysNone(text) ? other : null;

    /// <summary>Among what happened on a day a straw is one that was used, whatever else the row is of.</summary>
    private static bool IsOfSemen(string name) => NameFolding.Fold(name) is "straw" or "semen" or "straw no" or "straws";

    /// <summary>The kind that a text of a detail, or of a column that nobody reads, may tell of, by what it says.</summary>
    public Kind? ByCell(string name, string text, Kind kind, string value) => FloorSigns.IsOfOthers(name) ? null
        : IsEmptyTest(kind, value) ? _signs.In(text) is { } same && same.Id == kind.Id ? kind : null
        : Takes(kind) && _signs.In(text) is { } other && other.Id != kind.Id ? other : null;

    /// <summary>Whether a detail of a pregnancy test that found none says how old a calf is, that nobody is sure, or that she is to be looked at again.</summary>
    private static bool IsUnsure(string name, string text) => NameFolding.Fold(name) switch
    {
        "sure" or "certain" => text.Trim() == "?" || (FloorHeadings.SaysNone(text) && text.Any(char.IsLetter)),
        "recheck" or "days" or "weeks" or "age" => !FloorHeadings.SaysNone(text),
        _ => false,
    };

    private bool IsEmptyTest(Kind kind, string value) => kind.Id == _test?.Id && FloorHeadings.SaysNone(value);

    /// <summary>The kind that the name of a mob may tell of: <c>In calf</c>, <c>Springers</c>, <c>Dry cows</c>.</summary>
    public Kind? ByMob(string name) => _signs.InMob(name);

    private Kind? Hinted(string text)
    {
        var said = HintedWord.Of(text);
        return Array.Find(_hints, hint => hint.Word.StandsIn(said)).Kind;
    }

    private static bool Takes(Kind kind) => kind is not EventKind { Effect: not HerdEffect.None } and not EventKind { IsMobMove: true } && !FloorHints.Knows(kind) && !FloorHeadings.Asks(kind)
        && NameFolding.Fold(kind.Name) is not ("egg collection" or "flushing");
}
