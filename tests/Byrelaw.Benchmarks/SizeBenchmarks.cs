using System.Text;
using Byrelaw.Checking.Trouble;
using Byrelaw.Language.Reading;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Records.Reading;

namespace Byrelaw.Benchmarks;

/// <summary>What grows must not grow faster than its size, or hardly: rules that use the same define twice, long lists, rows that cannot be used.</summary>
[ShortRunJob]
public class SizeBenchmarks : IRuleFiles
{
    private const string Keeping = "\nrecords \"r\"\n  up to 2026-09-20\n  complete for mastitis since 2024-01-01\n";

    private readonly Dictionary<string, byte[]> _files = [];
    private Rulebook _list = null!, _defines = null!, _rules = null!;
    private byte[] _animals = null!, _undeclared = null!, _undated = null!;

    /// <summary>How many: bullets, rules on one subject, a sixteenth as many defines, a hundred times as many rows, half as many animals.</summary>
    [Params(100, 200, 400, 800)]
    public int Size { get; set; }

    [GlobalSetup]
    public void SetUp()
    {
        _list = Read("list", "  needs all of\n" + Joined(Size, i => $"    - no mastitis in the last {i + 5} days\n"), "");
        _rules = Read("rules", "  needs age at least 30 days\n", "", Joined(Size, i => $"rule \"R{i}\"\n  needs no mastitis between {2 * i} and {2 * i + 300} days ago\n  because \"so\"\n"));
        _defines = Read("defines", $"  needs d{Size / 16}\n", Joined(Size / 16 + 1, i => $"define d{i}\n" + (i == 0
            ? "  no mastitis in the last 30 days\n" : $"  any of\n    - d{i - 1}\n    - no mastitis in the last {30 + i} days\n    - d{i - 1}\n")));
        _animals = Bytes("animal,born,sex\n" + Joined(Size / 2, i => $"{i},2020-01-01,F\n"));
        _undeclared = Bytes("date,animal,kind\n" + Joined(100 * Size, i => $"2026-0{(i % 8) + 1}-{(i % 18) + 10},{i % (Size / 2)},foot bath\n"));
        _undated = Bytes("date,animal,kind\n" + Joined(100 * Size, i => $"{i % 28}.x,{i % (Size / 2)},mastitis\n"));
    }

    [Benchmark]
    public int CheckOneList() => TroubleFinder.Find(_list).Length;

    [Benchmark]
    public int CheckRulesOnOneSubject() => TroubleFinder.Find(_rules).Length;

    [Benchmark]
    public int CheckDefinesUsedTwice() => TroubleFinder.Find(_defines).Length;

    [Benchmark]
    public int ReadRowsOfAnUndeclaredKind() => HerdReader.Read(_animals, _undeclared, _list.Vocabulary, _list.Records).Count;

    [Benchmark]
    public int ReadRowsWithoutDates() => HerdReader.Read(_animals, _undated, _list.Vocabulary, _list.Records).Count;

    string IRuleFiles.Resolve(string from, string relative) => relative;

    string IRuleFiles.Show(string path) => path;

    byte[]? IRuleFiles.Read(string path) => _files.GetValueOrDefault(path);

    private Rulebook Read(string name, string needs, string defines, string rules = "")
    {
        _files[name] = Bytes($"event mastitis\n{defines}\nrules for r\nrule \"L\"\n{needs}  because \"so\"\n{rules}{Keeping}");
        var reading = RulebookReader.Read(name, this)!;
        return reading.HasErrors ? throw new InvalidOperationException($"The made-up rules were not read whole: {reading.Problems[0].Message}") : reading.Rulebook;
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static string Joined(int count, Func<int, string> line) => string.Concat(Enumerable.Range(0, count).Select(line));
}
