using System.Buffers.Binary;

namespace Byrelaw.Records.Spellings;

/// <summary>Looks up numbers by spellings as they stand in a file, in UTF-8, without making texts of them.</summary>
/// <remarks>Open addressing. The first eight bytes stand in the entry itself, so a short spelling is
/// found with one look into memory.</remarks>
internal sealed class SpellingTable
{
    private Entry[] _entries;
    private byte[] _bytes = new byte[256];
    private int _bytesUsed;
    private int _count;

    /// <summary>Makes room for about this many.</summary>
    public SpellingTable(int capacity = 16) =>
        _entries = new Entry[System.Numerics.BitOperations.RoundUpToPowerOf2((uint)Math.Max(16, capacity * 2))];

    /// <summary>Finds a spelling.</summary>
    public bool TryFind(ReadOnlySpan<byte> spelling, out int value)
    {
        ref readonly var entry = ref _entries[Place(spelling, Head(spelling))];
        value = entry.Value;
        return entry.IsUsed;
    }

    /// <summary>Adds a spelling, or changes what it stands for.</summary>
    public void Set(ReadOnlySpan<byte> spelling, int value)
    {
        if ((_count + 1) * 2 > _entries.Length)
        {
            Grow();
        }

        var head = Head(spelling);
        ref var entry = ref _entries[Place(spelling, head)];
        if (!entry.IsUsed)
        {
            entry = new Entry { Head = head, Length = spelling.Length, Offset = Keep(spelling), IsUsed = true };
            _count++;
        }

        entry.Value = value;
    }

    private int Place(ReadOnlySpan<byte> spelling, ulong head)
    {
        var mask = _entries.Length - 1;
        var place = (int)(Hash(spelling, head) >> 32) & mask;
        while (true)
        {
            ref readonly var entry = ref _entries[place];
            if (!entry.IsUsed || (entry.Head == head && entry.Length == spelling.Length && SameTail(entry, spelling)))
            {
                return place;
            }

            place = (place + 1) & mask;
        }
    }

    private bool SameTail(in Entry entry, ReadOnlySpan<byte> spelling) =>
        spelling.Length <= sizeof(ulong) || _bytes.AsSpan(entry.Offset, entry.Length).SequenceEqual(spelling);

    private static ulong Head(ReadOnlySpan<byte> spelling)
    {
        if (spelling.Length >= sizeof(ulong))
        {
            return BinaryPrimitives.ReadUInt64LittleEndian(spelling);
        }

        var head = 0UL;
        for (var i = spelling.Length - 1; i >= 0; i--)
        {
            head = (head << 8) | spelling[i];
        }

        return head;
    }

    private static ulong Hash(ReadOnlySpan<byte> spelling, ulong head)
    {
        // 2^64 divided by the golden ratio: spreads neighbouring numbers over the whole table.
        const ulong Spread = 0x9E3779B97F4A7C15;
        var hash = (head ^ (ulong)spelling.Length) * Spread;
        for (var i = sizeof(ulong); i < spelling.Length; i += sizeof(ulong))
        {
            hash = ((hash ^ (hash >> 29)) + Head(spelling[i..])) * Spread;
        }

        return hash ^ (hash >> 29);
    }

    private int Keep(ReadOnlySpan<byte> spelling)
    {
        if (spelling.Length <= sizeof(ulong))
        {
            return 0;
        }

        if (_bytesUsed + spelling.Length > _bytes.Length)
        {
            Array.Resize(ref _bytes, Math.Max(_bytes.Length * 2, _bytesUsed + spelling.Length));
        }

        spelling.CopyTo(_bytes.AsSpan(_bytesUsed));
        _bytesUsed += spelling.Length;
        return _bytesUsed - spelling.Length;
    }

    private void Grow()
    {
        var old = _entries;
        _entries = new Entry[old.Length * 2];
        foreach (var entry in old)
        {
            if (entry.IsUsed)
            {
                var spelling = entry.Length <= sizeof(ulong) ? HeadBytes(entry) : _bytes.AsSpan(entry.Offset, entry.Length);
                _entries[Place(spelling, entry.Head)] = entry;
            }
        }
    }

    private static ReadOnlySpan<byte> HeadBytes(in Entry entry)
    {
        var bytes = new byte[sizeof(ulong)];
        BinaryPrimitives.WriteUInt64LittleEndian(bytes, entry.Head);
        return bytes.AsSpan(0, entry.Length);
    }

    private struct Entry
    {
        public ulong Head;
        public int Length;
        public int Offset;
        public int Value;
        public bool IsUsed;
    }
}
