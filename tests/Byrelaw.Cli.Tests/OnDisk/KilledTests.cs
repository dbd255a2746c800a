using System.Diagnostics;
using CsCheck;

namespace Byrelaw.Cli.Tests.OnDisk;

/// <summary>
/// Every command that writes, killed at a random instant: what was there before is there, or what should come is, byte for byte, and the next run
/// leaves nothing else behind. CI tries a few instants each; <c>DEVELOPERS.md</c> has the line that tries 200.
/// </summary>
public sealed class KilledTests : IDisposable
{
    private const int Instants = 2;

    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData("out", "draft", "spring.byre")]
    [InlineData("out-plan", "plan", "spring.byre")]
    [InlineData("farm", "new", "farm")]
    [InlineData("untidy.byre", "tidy", "--write", "untidy.byre")]
    [InlineData("spring-2027.byre", "carry", "spring.byre", "--to", "spring 2027")]
    [InlineData("new.pack", "pack", "spring.byre", "-o", "new.pack", "--number", "2")]
    [InlineData("there", "unpack", "changed.pack", "there", "--replace")]
    [InlineData("keys/adviser.key", "key", "keys/adviser.key")]
    public void What_was_there_stays_or_what_should_come_is_there(string place, params string[] command)
    {
        Prepare();
        var before = Without(place, Look());
        using (var whole = new TemporaryFarm())
        {
            // How long it takes, and what it comes to.
            CopyTo(whole.Folder);
            var clock = Stopwatch.StartNew();
            RealProgram.Run(whole.Folder, command).Code.ShouldBe(0);
            var takes = clock.ElapsedMilliseconds;
            var after = Look(whole.Folder);
            var start = Look();
            Instant(takes).Hold(instant => Try(place, command, instant, start, after), count: Instants, oneByOne: true);
        }

        Without(place, Look()).Keys.ShouldBe(before.Keys);
    }

    /// <summary>Half of the instants lie anywhere in its run, half in the last fifth, when it writes.</summary>
    private static Gen<int> Instant(long takes) => Gen.Bool.SelectMany(late => Gen.Int[late ? (int)(takes * 4 / 5) : 0, (int)takes]);

    private void Try(string place, string[] command, int instant, SortedDictionary<string, string> start, SortedDictionary<string, string> after)
    {
        var process = RealProgram.Start(_farm.Folder, command);
        Thread.Sleep(instant);
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();

        // The next run of any command that reads there clears up, or finishes, before it looks; that of the same command comes to the end.
        RealProgram.Run(_farm.Folder, "check", "there/spring.byre").Code.ShouldBe(0);
        var found = Part(Only(place, Look()), path => !IsLeftOver(path));
        var isOne = Same(found, Only(place, start)) || Same(found, Only(place, after));
        var again = RealProgram.Run(_farm.Folder, command);
        var whole = Look();
        var isWhole = Same(Only(place, whole), Only(place, after)) && !whole.Keys.Any(IsLeftOver);
        Restore(place, start);
        Assert.True(
            isOne && isWhole,
            $"killed after {instant} ms: {(isOne ? "" : "neither the old nor the new:\n" + Differing(found, Only(place, after)))}{(isWhole ? "" : $"\nthe next run does not end: {again}\n{Differing(whole, after)}")}");
    }

    private static string Differing(SortedDictionary<string, string> one, SortedDictionary<string, string> other) => string.Join(
        '\n', one.Keys.Union(other.Keys).Where(path => one.GetValueOrDefault(path) != other.GetValueOrDefault(path)));

    private void Prepare()
    {
        _farm.Run("draft", "spring.byre").Code.ShouldBe(ExitCode.Done);
        _farm.Run("plan", "spring.byre").Code.ShouldBe(ExitCode.Done);
        _farm.Run("pack", "spring.byre", "-o", "old.pack").Code.ShouldBe(ExitCode.Done);
        _farm.Run("unpack", "old.pack", "there").Code.ShouldBe(ExitCode.Done);
        _farm.Write("untidy.byre", "event    heat\n" + string.Concat(Enumerable.Range(1, 4000).Select(i => $"# remark {i}\n")));
        _farm.Change("recipients.byre", "at least 56 days", "at least 63 days");
        _farm.Change("vocabulary.byre", "event mating\n", "event mating\nevent heat\n");
        _farm.Run("pack", "spring.byre", "-o", "changed.pack").Code.ShouldBe(ExitCode.Done);
        Directory.CreateDirectory(_farm.At("keys"));
    }

    private SortedDictionary<string, string> Look() => Look(_farm.Folder);

    /// <summary>Every file with what it holds; but for what the log and the keys hold, which is another each time.</summary>
    private static SortedDictionary<string, string> Look(string folder)
    {
        var all = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in Directory.EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }))
        {
            var name = Path.GetRelativePath(folder, path);
            if (!name.EndsWith("judging-log.jsonl", StringComparison.Ordinal))
            {
                all[name] = name.StartsWith("keys/", StringComparison.Ordinal) ? $"{new FileInfo(path).Length}" : File.ReadAllText(path);
            }
        }

        return all;
    }

    private static SortedDictionary<string, string> Only(string place, SortedDictionary<string, string> all) => Part(all, path => Belongs(place, path));

    private static SortedDictionary<string, string> Without(string place, SortedDictionary<string, string> all) => Part(all, path => !Belongs(place, path));

    private static bool Belongs(string place, string path) => path.StartsWith(place, StringComparison.Ordinal);

    private static SortedDictionary<string, string> Part(SortedDictionary<string, string> all, Func<string, bool> holds)
    {
        var part = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, text) in all.Where(file => holds(file.Key)))
        {
            part[path] = text;
        }

        return part;
    }

    /// <summary>What a run that was cut off leaves, hidden, until the next one that writes there clears it.</summary>
    private static bool IsLeftOver(string path) => path.Contains(".byrelaw-", StringComparison.Ordinal);

    private static bool Same(SortedDictionary<string, string> one, SortedDictionary<string, string> other) => one.SequenceEqual(other);

    private void Restore(string place, SortedDictionary<string, string> start)
    {
        foreach (var path in Look().Keys.Where(path => Belongs(place, path)))
        {
            File.Delete(_farm.At(path));
        }

        if (Directory.Exists(_farm.At(place)))
        {
            Directory.Delete(_farm.At(place), recursive: true);
        }

        foreach (var (path, text) in Only(place, start))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(_farm.At(path))!);
            File.WriteAllText(_farm.At(path), text);
        }
    }

    private void CopyTo(string folder)
    {
        foreach (var path in Directory.EnumerateFiles(_farm.Folder, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(_farm.Folder, path));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(path, copy, overwrite: true);
        }
    }
}
