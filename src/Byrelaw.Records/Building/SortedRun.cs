using System.Buffers;

namespace Byrelaw.Records.Building;

/// <summary>Rows of one kind sorted by animal, then day, then line: those of animal a stand at places
/// <c>Starts[a]</c> to <c>Starts[a + 1] - 1</c>.</summary>
internal sealed record SortedRun<TResult>(int[] Starts, int[] Days, int[] Lines, TResult[] Results)
    where TResult : struct
{
    /// <summary>Sorts what several threads have read.</summary>
    /// <param name="animals">How many animals there are.</param>
    /// <param name="parts">Rows in any order; rows taken out are passed over.</param>
    /// <param name="onceADay">Keep only the first line of each animal and day.</param>
    public static SortedRun<TResult> Of(int animals, IReadOnlyList<ChunkedList<Staged<TResult>>> parts, bool onceADay = false)
    {
        var starts = Count(animals, parts);
        var count = starts[animals];

        // Day and line in one number: sorting these sorts by day, then by line.
        var keys = ArrayPool<long>.Shared.Rent(count);
        var results = HasResults ? ArrayPool<TResult>.Shared.Rent(count) : [];
        Scatter(starts, parts, keys, results);
        SortEach(starts, keys, results);
        if (onceADay)
        {
            count = OnceADay(starts, keys, results);
        }

        var run = Unpack(starts, keys.AsSpan(0, count), results);
        ArrayPool<long>.Shared.Return(keys);
        if (HasResults)
        {
            ArrayPool<TResult>.Shared.Return(results);
        }

        return run;
    }

    private static bool HasResults => typeof(TResult) != typeof(Nothing);

    /// <summary>Puts every row among those of its animal.</summary>
    private static void Scatter(int[] starts, IReadOnlyList<ChunkedList<Staged<TResult>>> parts, long[] keys, TResult[] results)
    {
        var next = ArrayPool<int>.Shared.Rent(starts.Length);
        starts.CopyTo(next, 0);
        foreach (var part in parts)
        {
            for (var chunk = 0; chunk < part.ChunkCount; chunk++)
            {
                foreach (ref var row in part.Chunk(chunk))
                {
                    if (row.Animal != Staged<TResult>.TakenOut)
                    {
                        var place = next[row.Animal]++;
                        keys[place] = ((long)row.Day << 32) | (uint)row.Line;
                        if (HasResults)
                        {
                            results[place] = row.Result;
                        }
                    }
                }
            }
        }

        ArrayPool<int>.Shared.Return(next);
    }

    private static int[] Count(int animals, IReadOnlyList<ChunkedList<Staged<TResult>>> parts)
    {
        var starts = new int[animals + 1];
        foreach (var part in parts)
        {
            for (var chunk = 0; chunk < part.ChunkCount; chunk++)
            {
                foreach (ref var row in part.Chunk(chunk))
                {
                    if (row.Animal != Staged<TResult>.TakenOut)
                    {
                        starts[row.Animal + 1]++;
                    }
                }
            }
        }

        for (var animal = 0; animal < animals; animal++)
        {
            starts[animal + 1] += starts[animal];
        }

        return starts;
    }

    private static void SortEach(int[] starts, long[] keys, TResult[] results)
    {
        for (var animal = 0; animal + 1 < starts.Length; animal++)
        {
            var run = keys.AsSpan(starts[animal]..starts[animal + 1]);
            for (var i = 1; i < run.Length; i++)
            {
                if (run[i - 1] > run[i])
                {
                    if (HasResults)
                    {
                        run.Sort(results.AsSpan(starts[animal], run.Length));
                    }
                    else
                    {
                        run.Sort();
                    }

                    break;
                }
            }
        }
    }

    /// <summary>Moves the kept rows together, and says how many they are; <paramref name="starts"/> follows.</summary>
    private static int OnceADay(int[] starts, long[] keys, TResult[] results)
    {
        var kept = 0;
        var from = 0;
        for (var animal = 0; animal + 1 < starts.Length; animal++)
        {
            var to = starts[animal + 1];
            for (var i = from; i < to; i++)
            {
                if (i == from || keys[i] >> 32 != keys[i - 1] >> 32)
                {
                    keys[kept] = keys[i];
                    if (HasResults)
                    {
                        results[kept] = results[i];
                    }

                    kept++;
                }
            }

            from = to;
            starts[animal + 1] = kept;
        }

        return kept;
    }

    private static SortedRun<TResult> Unpack(int[] starts, ReadOnlySpan<long> keys, TResult[] results)
    {
        var days = GC.AllocateUninitializedArray<int>(keys.Length);
        var lines = GC.AllocateUninitializedArray<int>(keys.Length);
        for (var i = 0; i < keys.Length; i++)
        {
            days[i] = (int)(keys[i] >> 32);
            lines[i] = (int)keys[i];
        }

        return new SortedRun<TResult>(starts, days, lines, HasResults ? results.AsSpan(0, keys.Length).ToArray() : []);
    }
}
