namespace Byrelaw.LanguageServer.Readings;

/// <summary>The open documents, and what has been read of them. What is out of date is read again when it is next needed.</summary>
internal sealed class Workspace
{
    private readonly Dictionary<string, RootReading> _readings = new(StringComparer.Ordinal);

    /// <summary>Where files come from.</summary>
    public EditorFiles Files { get; } = new();

    /// <summary>A file changed in the editor or on disk: forgets what was read of it.</summary>
    public void Changed(string path)
    {
        foreach (var reading in _readings.Values.Where(reading => reading.Asked.Paths.Contains(path)).ToList())
        {
            _readings.Remove(reading.Path);
        }
    }

    /// <summary>What a document and all it uses say; null where there is no such file. Files that are not open are read
    /// each time: nobody tells when they change.</summary>
    public RootReading? Reading(string path)
    {
        if (!_readings.TryGetValue(path, out var reading) && RootReading.Read(path, Files) is { } read)
        {
            reading = read;
            if (Files.Open.ContainsKey(path))
            {
                _readings[path] = read;
            }
        }

        return reading;
    }

    /// <summary>What each open document says.</summary>
    public IReadOnlyList<RootReading> OpenReadings() => [.. Files.Open.Keys.Select(Reading).OfType<RootReading>()];

    /// <summary>What a file says by itself, and then what each open document says that uses it.</summary>
    public IEnumerable<(RootReading Reading, SourceFile File)> ReadingsWith(string path)
    {
        foreach (var root in Files.Open.Keys.Where(root => root != path).Prepend(path).ToList())
        {
            if (Reading(root) is { } reading && reading.FileAt(path) is { } file)
            {
                yield return (reading, file);
            }
        }
    }

    /// <summary>A document as it was read, and an offset in it; null where there is no such file.</summary>
    public (RootReading Reading, SourceFile File, int Offset)? At(PlaceParams place)
    {
        var path = FilePaths.Of(place.TextDocument.Uri);
        return Reading(path) is { } reading && reading.FileAt(path) is { } file
            ? (reading, file, TextLines.Of(file).Offset(place.Position))
            : null;
    }

    /// <summary>A document as it was read; null where there is no such file.</summary>
    public (RootReading Reading, SourceFile File)? Document(DocumentName document)
    {
        var path = FilePaths.Of(document.Uri);
        return Reading(path) is { } reading && reading.FileAt(path) is { } file ? (reading, file) : null;
    }

    /// <summary>The place of a stretch of a file; none for one of the program's own, which no editor can open.</summary>
    public IEnumerable<Location> Locations(RootReading reading, SourceSpan span)
    {
        var path = reading.PathOf(span.File.Path);
        return BaseEditions.IsPath(path) ? [] : [new(Files.Uri(path), TextLines.Range(span))];
    }
}
