namespace Byrelaw.Records.Events;

/// <summary>A list that grows without moving what is in it (but for the first few thousand), so that millions of rows never stand in
/// memory twice, and that is small while it holds little.</summary>
internal sealed class ChunkedList<T>
    where T : struct
{
    private const int ChunkSize = 8192;
    private const int FirstSize = 16;
    private readonly List<T[]> _chunks = [];
    private int _usedInLast = ChunkSize;

    /// <summary>How many there are.</summary>
    public int Count => (_chunks.Count * ChunkSize) - (ChunkSize - _usedInLast);

    /// <summary>How many chunks hold them.</summary>
    public int ChunkCount => _chunks.Count;

    /// <summary>Adds one at the end.</summary>
    public void Add(in T item)
    {
        if (_usedInLast == ChunkSize)
        {
            _chunks.Add(GC.AllocateUninitializedArray<T>(_chunks.Count == 0 ? FirstSize : ChunkSize));
            _usedInLast = 0;
        }
        else if (_usedInLast == _chunks[^1].Length)
        {
            var grown = GC.AllocateUninitializedArray<T>(2 * _usedInLast);
            _chunks[^1].CopyTo(grown, 0);
            _chunks[^1] = grown;
        }

        _chunks[^1][_usedInLast++] = item;
    }

    /// <summary>The items of one chunk.</summary>
    public Span<T> Chunk(int chunk) => _chunks[chunk].AsSpan(0, chunk == _chunks.Count - 1 ? _usedInLast : ChunkSize);

    /// <summary>All items, in the order of adding.</summary>
    public IEnumerable<T> All()
    {
        for (var chunk = 0; chunk < ChunkCount; chunk++)
        {
            var items = _chunks[chunk];
            for (var i = 0; i < Chunk(chunk).Length; i++)
            {
                yield return items[i];
            }
        }
    }
}
