using System.Security.Cryptography;

namespace Byrelaw.Records.Sources;

/// <summary>Reads the sources that a farm names into the landed form: whole, or herd by herd.</summary>
internal sealed class SourceReader
{
    /// <summary>The most bytes that one source may hold once it is unpacked.</summary>
    public const long MostBytes = 1_000_000_000;

    private readonly Vocabulary _vocabulary;
    private readonly RecordKeeping _keeping;
    private readonly IReadOnlyList<OpenedSource> _sources;
    private readonly IReadOnlyList<Diagnostic> _problems;
    private readonly byte[] _hash;
    private HerdShares? _shares;

    private SourceReader(Vocabulary vocabulary, RecordKeeping keeping, SourceOpener opened) =>
        (_vocabulary, _keeping, _sources, _problems, _hash) = (vocabulary, keeping, opened.Sources, opened.Problems, opened.Hash);

    /// <summary>Reads all sources as one herd.</summary>
    /// <param name="read">Gives the bytes of a file by the name that the farm gives it; null where there is none.</param>
    /// <param name="show">Names a file in messages.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says of its records.</param>
    /// <param name="list">The files in a folder that a source names; null where it names a file, or nothing is there.</param>
    public static RecordInput Read(Func<string, byte[]?> read, Func<string, string> show, Vocabulary vocabulary, RecordKeeping keeping, Func<string, IReadOnlyList<string>?>? list = null) =>
        Open(read, show, vocabulary, keeping, list).Whole();

    /// <summary>Opens all sources; what is read from them is told later.</summary>
    /// <inheritdoc cref="Read"/>
    public static SourceReader Open(Func<string, byte[]?> read, Func<string, string> show, Vocabulary vocabulary, RecordKeeping keeping, Func<string, IReadOnlyList<string>?>? list = null)
    {
        using var opener = new SourceOpener(read, show, list, keeping, vocabulary);
        foreach (var source in keeping.Sources)
        {
            opener.Open(source);
        }

        return new SourceReader(vocabulary, keeping, opener);
    }

    /// <summary>The herds that rows say they are of, in order; none where no source says which herd a row is of.</summary>
    public ImmutableArray<string> Herds => Shares.Herds;

    /// <summary>How many animals stand in no herd, though there are herds.</summary>
    public int WithoutHerd => Shares.WithoutHerd;

    private bool HasNoAnimals => _sources.Count > 0 && !_keeping.Sources.Any(source => source.Rows == SourceRows.Animals);

    private HerdShares Shares => _shares ??= HerdShares.Of([.. _sources.Select(source => source.Read).OfType<TranslatedSource>()], Found());

    /// <summary>All rows.</summary>
    public RecordInput Whole() => Translated([.. _sources.Select(source => source.Read)], Convert.ToHexStringLower(_hash));

    /// <summary>The rows that count in one herd.</summary>
    public RecordInput OfHerd(string herd) => Translated(
        [.. _sources.Select(source => source.Read?.OfHerd(AlikeText.OfHerd(herd), Shares.RowsOf(source.Read, herd)))],
        Convert.ToHexStringLower(SHA256.HashData([.. _hash, .. Encoding.UTF8.GetBytes(herd)])));

    /// <summary>Which animals go by which tags, in all herds together.</summary>
    private FoundAnimals Found()
    {
        var found = new FoundAnimals();
        if (_sources.Any(source => source.Read?.Column("animal")?.IsFoundBy == true))
        {
            foreach (var translator in Of(_sources.Select(source => source.Read), new AnimalRows(_vocabulary), new EventRows(_vocabulary), []))
            {
                translator.TranslateAnimals(found);
            }
        }

        return found;
    }

    private RecordInput Translated(List<TranslatedSource?> sources, string fingerprint)
    {
        var (animals, events, found, last) = (new AnimalRows(_vocabulary), new EventRows(_vocabulary, _sources.Any(source => source.Source.IsRecorded)), new FoundAnimals(), new List<HerLast>());
        AnimalTranslator[] translators = [.. Of(sources, animals, events, last)];
        Array.ForEach(translators, translator => translator.TranslateAnimals(found));
        Array.ForEach(translators, translator => translator.TranslateEvents(found));
        var notThere = new WhatIsNotThere(_keeping.Sources, _vocabulary, animals, events);
        for (var place = 0; place < sources.Count; place++)
        {
            notThere.Suspend(place, _sources[place]);
            if (sources[place] is { Source.Rows: SourceRows.Events } source)
            {
                new EventTranslator(source, _vocabulary, found, events, new SourceHints(source, _vocabulary, _keeping)).Translate();
            }
        }

        var rows = animals.ToRows();
        return new RecordInput(RecordFile.Of(Shown(SourceRows.Animals), rows.ToBytes()), RecordFile.Of(Shown(SourceRows.Events), events.Rows.ToBytes()))
        {
            Places = new SourcePlaces(sources, _sources, rows, events.Rows, _vocabulary),
            Last = [.. last],
            LeftOut = [.. sources.SelectMany(source => source?.LeftOut() ?? [])],
            WordsLeftOut = [.. sources.SelectMany(source => source?.WordsLeftOut() ?? [])],
            Problems = [.. HasNoAnimals ? [SourceFileProblems.NoAnimals(_sources[0].Shown)] : Array.Empty<Diagnostic>(), .. _problems],
            HasNoAnimals = HasNoAnimals,
            HeadingsNotRead = [.. _sources.SelectMany(source => source.HeadingsNotRead).Distinct(StringComparer.Ordinal)],
            HeadingsThatTell = [.. _sources.SelectMany(source => source.HeadingsThatTell).Distinct(StringComparer.Ordinal)],
            Fingerprint = $"sha256:{fingerprint}",
        };
    }

    /// <summary>The file of sources with such rows where there is one; else the records as a whole.</summary>
    private string Shown(SourceRows rows) => _sources.Where(source => source.Source.Rows == rows).ToList() is [var only] ? only.Shown : "the records";

    /// <summary>Sources that name animals by their numbers go first: by what they say the others find them.</summary>
    private IEnumerable<AnimalTranslator> Of(IEnumerable<TranslatedSource?> sources, AnimalRows animals, EventRows events, List<HerLast> last) => sources.OfType<TranslatedSource>()
        .Where(source => source.Source.Rows == SourceRows.Animals).OrderBy(source => source.Column("animal")?.IsFoundBy == true ? 1 : 0)
        .Select(source => new AnimalTranslator(source, animals, events, last, _vocabulary, _keeping.UpTo, new SourceHints(source, _vocabulary, _keeping)));
}
