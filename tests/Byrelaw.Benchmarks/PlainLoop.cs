using System.Buffers.Text;
using System.Diagnostics;
using System.Text;
using CsvHelper;

namespace Byrelaw.Benchmarks;

/// <summary>
/// The yardstick: the loop that a programmer would write by hand for the same twelve criteria, straight off the two files with a kept CSV library. It believes every
/// row, knows no doubt and gives no reasons.
/// </summary>
internal static class PlainLoop
{
    private static readonly int Epoch = new DateOnly(1970, 1, 1).DayNumber;

    private static readonly string[] Kinds = ["calving", "heat", "mating", "transfer", "mastitis", "metritis", "lameness", "vaccination", "body condition", "BVD virus", "uterine check"];

    /// <summary>Reads the files of a folder and counts who meets all twelve.</summary>
    public static void Run(string folder)
    {
        var clock = Stopwatch.StartNew();
        var (places, born) = Animals(Path.Combine(folder, "animals.csv"));
        var rows = Events(Path.Combine(folder, "events.csv"), places, out var starts);
        var read = clock.Elapsed;
        var all = 0;
        var day = Day.Number(MadeUpHerd.Known);
        for (var animal = 0; animal < born.Count; animal++)
        {
            all += Meets(rows.AsSpan(starts[animal], starts[animal + 1] - starts[animal]), born[animal], day) ? 1 : 0;
        }

        using var self = Process.GetCurrentProcess();
        Console.WriteLine($"plain loop: {born.Count} animals, {rows.Length} events: read in {read.TotalSeconds:0.0} s, {all} meet all twelve after {clock.Elapsed.TotalSeconds:0.0} s, processor {self.TotalProcessorTime.TotalSeconds:0.0} s, at most {self.PeakWorkingSet64 >> 20} MiB");
    }

    private static (Dictionary<string, int> Places, List<int> Born) Animals(string file)
    {
        var (places, born) = (new Dictionary<string, int>(), new List<int>());
        using var reader = CsvReader.FromFile(file, new CsvReaderOptions { HasHeader = true });
        while (reader.Read())
        {
            places.Add(Encoding.UTF8.GetString(reader.GetSpan(0)), born.Count);
            born.Add(Date(reader.GetSpan(1)));
        }

        return (places, born);
    }

    private static Entry[] Events(string file, Dictionary<string, int> places, out int[] starts)
    {
        var rows = new List<(int Animal, Entry Entry)>();
        starts = new int[places.Count + 1];
        byte[][] kinds = [.. Kinds.Select(Encoding.UTF8.GetBytes)];
        var find = places.GetAlternateLookup<ReadOnlySpan<char>>();
        Span<char> number = stackalloc char[64];
        using var reader = CsvReader.FromFile(file, new CsvReaderOptions { HasHeader = true });
        while (reader.Read())
        {
            var kind = reader.GetSpan(2);
            var place = -1;
            for (var i = 0; i < kinds.Length && place < 0; i++)
            {
                place = kind.SequenceEqual(kinds[i]) ? i : -1;
            }

            if (place < 0)
            {
                continue;
            }

            var value = reader.GetSpan(3);
            var animal = find[number[..Encoding.UTF8.GetChars(reader.GetSpan(1), number)]];
            var result = value.IsEmpty ? 0 : Utf8Parser.TryParse(value, out float measured, out _) ? measured : value.SequenceEqual("negative"u8) || value.SequenceEqual("clean"u8) ? 1f : 0f;
            rows.Add((animal, new Entry(Date(reader.GetSpan(0)), (byte)place, result)));
            starts[animal + 1]++;
        }

        for (var animal = 0; animal < places.Count; animal++)
        {
            starts[animal + 1] += starts[animal];
        }

        var (sorted, next) = (new Entry[rows.Count], (int[])starts.Clone());
        foreach (var (animal, entry) in System.Runtime.InteropServices.CollectionsMarshal.AsSpan(rows))
        {
            sorted[next[animal]++] = entry;
        }

        return sorted;
    }

    private static bool Meets(ReadOnlySpan<Entry> hers, int born, int day)
    {
        var calved = -1;
        foreach (var entry in hers)
        {
            calved = entry.Kind == 0 && entry.Day <= day ? Math.Max(calved, entry.Day) : calved;
        }

        var since = calved < 0 ? born : calved;
        Span<int> count = stackalloc int[8];
        var (scored, tested, looked, score, virus, uterus) = (int.MinValue, int.MinValue, int.MinValue, 0f, 0f, 0f);
        foreach (var entry in hers)
        {
            if (entry.Day > day)
            {
                continue;
            }

            switch (entry.Kind)
            {
                case 1 or 2 or 3:
                    count[entry.Kind] += entry.Day >= since ? 1 : 0;
                    break;
                case 4 or 6:
                    count[entry.Kind] += entry.Day >= day - 30 ? 1 : 0;
                    break;
                case 5:
                    count[5] += entry.Day >= day - 60 ? 1 : 0;
                    break;
                case 7:
                    count[7] += entry.Day >= day - 365 && entry.Day <= day - 28 ? 1 : 0;
                    break;
                case 8 when entry.Day >= scored:
                    (scored, score) = (entry.Day, entry.Result);
                    break;
                case 9 when entry.Day >= tested:
                    (tested, virus) = (entry.Day, entry.Result);
                    break;
                case 10 when entry.Day >= looked:
                    (looked, uterus) = (entry.Day, entry.Result);
                    break;
            }
        }

        return day - born >= 400 && (calved < 0 || day - since >= 56) && count[1] >= 1 && count[4] == 0 && count[5] == 0 && count[6] == 0 && count[3] <= 2 && count[7] >= 1
            && scored >= day - 45 && score is >= 4 and <= 5.5f && virus == 1 && tested > int.MinValue && looked >= since + 21 && uterus == 1 && count[2] == 0;
    }

    private static int Date(ReadOnlySpan<byte> text) => new DateOnly(Digits(text[..4]), Digits(text[5..7]), Digits(text[8..10])).DayNumber - Epoch;

    private static int Digits(ReadOnlySpan<byte> text)
    {
        var number = 0;
        foreach (var digit in text)
        {
            number = (number * 10) + digit - '0';
        }

        return number;
    }

    private readonly record struct Entry(int Day, byte Kind, float Result);
}
