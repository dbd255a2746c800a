using System.Diagnostics;
using Byrelaw.Cli.Tests.Sheets;
using CsCheck;

namespace Byrelaw.Cli.Tests.OnDisk;

/// <summary>
/// <c>record</c> and <c>plan --sheet</c>, killed at a random instant: the book and the ledger are as they were or as they should be, byte for byte, no paper lies there that the ledger
/// does not know of, and the next run comes to the same end. CI tries a few instants; <c>DEVELOPERS.md</c> has the line that tries 100.
/// </summary>
public sealed class KilledSheetTests : IDisposable
{
    private const int Instants = 1;

    private readonly TwoCows _farm = TwoCows.OfToday();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_sheet_that_is_recorded_is_on_record_wholly_or_not_at_all()
    {
        var number = _farm.Draw(_farm.Morning);
        var file = _farm.Fill(number, (1, "done", "yes"), (2, "done", "no"), (2, "reason", "not found"));
        Kill("record", "spring.byre", file, "--by", "farmer");
    }

    [Fact]
    public void A_sheet_that_is_drawn_is_known_of_before_it_lies_there() => Kill("plan", "spring.byre", "--sheet", _farm.Morning);

    private void Kill(params string[] command)
    {
        var start = Look();
        var clock = Stopwatch.StartNew();
        RealProgram.Run(_farm.Farm.Folder, command).Code.ShouldBe(0);
        var takes = (int)clock.ElapsedMilliseconds;
        var after = Look();
        Restore(start);
        Gen.Bool.SelectMany(late => Gen.Int[late ? takes * 4 / 5 : 0, takes]).Hold(instant => Try(command, instant, start, after), count: Instants, oneByOne: true);
    }

    private void Try(string[] command, int instant, SortedDictionary<string, string> start, SortedDictionary<string, string> after)
    {
        using (var process = RealProgram.Start(_farm.Farm.Folder, command))
        {
            Thread.Sleep(instant);
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
        }

        // Whoever reads the records next finishes what was decided.
        RealProgram.Run(_farm.Farm.Folder, "why", "spring.byre", "7").Code.ShouldBe(0);
        var found = Look();
        var records = Part(found, "records");
        var isOne = records.SequenceEqual(Part(start, "records")) || records.SequenceEqual(Part(after, "records"));
        var isKnown = records.SequenceEqual(Part(after, "records")) || Part(found, "sheets").SequenceEqual(Part(start, "sheets"));
        var again = RealProgram.Run(_farm.Farm.Folder, command);
        var whole = Look();
        Restore(start);
        Assert.True(isOne, $"killed after {instant} ms: neither the old nor the new:\n{string.Join('\n', records)}");
        Assert.True(isKnown, $"killed after {instant} ms: a paper of which no ledger knows");
        Assert.True(whole.SequenceEqual(after), $"killed after {instant} ms: the next run does not end: {again}\n{string.Join('\n', whole.Keys)}");
    }

    /// <summary>Every file with what it holds, but for the log of judging, which is another each time, and what a run that was cut off leaves until the next one clears it.</summary>
    private SortedDictionary<string, string> Look()
    {
        var all = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in Directory.EnumerateFiles(_farm.Farm.Folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }))
        {
            var name = Path.GetRelativePath(_farm.Farm.Folder, path);
            if (!name.Contains(".byrelaw-", StringComparison.Ordinal) && !name.EndsWith("judging-log.jsonl", StringComparison.Ordinal))
            {
                all[name] = Convert.ToHexString(File.ReadAllBytes(path));
            }
        }

        return all;
    }

    private static SortedDictionary<string, string> Part(SortedDictionary<string, string> all, string folder)
    {
        var part = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, bytes) in all.Where(file => file.Key.StartsWith(folder + "/", StringComparison.Ordinal)))
        {
            part[path] = bytes;
        }

        return part;
    }

    private void Restore(SortedDictionary<string, string> start)
    {
        foreach (var path in Directory.EnumerateFiles(_farm.Farm.Folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }).ToList())
        {
            if (!start.ContainsKey(Path.GetRelativePath(_farm.Farm.Folder, path)))
            {
                File.Delete(path);
            }
        }

        foreach (var (path, bytes) in start)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(_farm.Farm.At(path))!);
            File.WriteAllBytes(_farm.Farm.At(path), Convert.FromHexString(bytes));
        }
    }
}
