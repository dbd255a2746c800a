namespace Byrelaw.Records.Suggesting;

/// <summary>
/// What headings of other people's files may mean, beside declared names and the hints of the vocabulary. They feed suggestions; nothing is
/// read by them. Common practice, no source.
/// </summary>
internal static class HeadingHints
{
    /// <summary>The day on which an animal left; what brought it about is no kind of its own.</summary>
    public const string Gone = "gone";

    /// <summary>Why she left.</summary>
    public const string WhyGone = "why gone";

    private static readonly ImmutableArray<(string What, ImmutableArray<string> Headings)> All =
    [
        ("animal", ["animal", "animal no", "animal number", "cow", "cow no", "cow number", "line no", "line number", "herd number", "number", "no", "nr", "id"]),
        ("official identity", ["tag", "tag no", "ear tag", "eartag", "ear number", "eid", "life number", "national id", "official no"]),
        ("born", ["born", "birth", "birth date", "birthdate", "date of birth", "dob"]),
        ("sex", ["sex", "gender", "m f", "f m"]),
        ("breed", ["breed", "race"]),
        ("mob", ["mob", "group", "pen"]),
        ("herd", ["herd", "herd no", "herd id", "herd name", "herd code"]),
        ("parity", ["parity", "lact", "lactation", "lactations", "lact no", "lactation number"]),
        ("date", ["date", "day", "datum", "event date", "sampled", "sample date", "when"]),
        ("kind", ["kind", "event", "event type", "type", "code", "what", "entry"]),
        ("value", ["value", "result", "results", "reading", "detail", "details", "score"]),
        ("unit", ["unit", "units"]),
        ("note", ["note", "notes", "remark", "remarks", "comment", "comments", "vet note"]),
        ("recorded", ["recorded", "entered", "entry date"]),
        ("calving", ["calved", "calving", "calving date", "last calving"]),
        ("mating", ["served", "service", "service date", "last service"]),
        ("purchase", ["bought", "bought on", "date bought", "purchased", "purchase date"]),
        (Gone, ["gone", "gone on", "left", "left on", "date left", "exit", "exit date", "departed", "departure date", "removed"]),
        (WhyGone, ["why gone", "reason", "reason gone", "reason left", "why left", "exit reason", "leaving reason"]),
    ];

    private static readonly Dictionary<string, string> ByHeading =
        All.SelectMany(hint => hint.Headings, (hint, heading) => (hint.What, heading)).ToDictionary(pair => pair.heading, pair => pair.What, StringComparer.Ordinal);

    /// <summary>What a heading may mean; null where nothing is known of it.</summary>
    public static string? Find(string heading) => ByHeading.GetValueOrDefault(Words(heading));

    /// <summary>A heading as it is compared: signs between words are spaces.</summary>
    private static string Words(string heading) =>
        string.Join(' ', NameFolding.Fold(heading).Split([' ', '_', '-', '.', '/'], StringSplitOptions.RemoveEmptyEntries));
}
