using System.Security.Cryptography;
using System.Text;

namespace Byrelaw.Cli.Tests.Tampered;

/// <summary>What somebody, or some tool, may do to a log of judging, and what the program says to each: one table, approved.</summary>
public sealed class TamperedLogsTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();
    private readonly StringBuilder _table = new("| what was done to the log | what `check` says |\n| --- | --- |\n");
    private string[] _lines = [];
    private string _lastHash = "";

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void What_is_said_to_each_is_as_approved()
    {
        for (var day = 0; day < 5; day++)
        {
            _farm.Run("draft", "spring.byre").Code.ShouldBe(ExitCode.Done);
            _farm.Clock.Now = _farm.Clock.Now.AddDays(1);
        }

        _lines = File.ReadAllLines(_farm.At("judging-log.jsonl"));
        _lastHash = HashOn(_lines[^1]);
        Tools();
        Hands();
        KeptHash();
        Snapshot.Verify(_table.ToString(), extension: "md");
    }

    /// <summary>What tools do: it is a good log still, and is written on.</summary>
    private void Tools()
    {
        Good("nothing", Text(_lines));
        Good("every line end made CRLF, as tools that keep versions do", Text(_lines, "\r\n"));
        Good("some line ends made CRLF", Text(_lines[..2], "\r\n") + Text(_lines[2..]));
        Good("a byte-order mark put before it", "\uFEFF" + Text(_lines));
        Good("CRLF and a byte-order mark", "\uFEFF" + Text(_lines, "\r\n"));
        Good("its last line end taken off", Text(_lines).TrimEnd('\n'));
        Row("its last line cut in half, as by a crash", Text(_lines)[..^100]);
    }

    private void Hands()
    {
        Bad("a count of animals", Text(With(2, _lines[2].Replace("\"ready\":", "\"ready\":1", StringComparison.Ordinal))));
        Bad("the day of a judging", Text(With(1, _lines[1].Replace("2026-09-22", "2026-09-20", StringComparison.Ordinal))));
        Bad("a line in the middle taken out", Text([.. _lines[..2], .. _lines[3..]]));
        Bad("the first line taken out", Text(_lines[1..]));
        Bad("two lines changed round", Text([_lines[0], _lines[2], _lines[1], .. _lines[3..]]));
        Bad("a line copied in a second time", Text([.. _lines[..3], _lines[1], .. _lines[3..]]));
        Bad("a note written between", Text([.. _lines[..3], "the vet was not pleased", .. _lines[3..]]));
        Bad("an empty line put between", Text([.. _lines[..3], "", .. _lines[3..]]));
        Bad("one hexadecimal digit of a hash", Text(With(2, _lines[2].Replace(HashOn(_lines[2]), Turned(HashOn(_lines[2])), StringComparison.Ordinal))));
        Bad("a line made unreadable", Text(With(2, new string('x', 40))));
        Bad("a line rewritten with a hash that is right", Text(With(2, Sealed(_lines[2].Replace("\"command\":\"draft\"", "\"command\":\"plan\"", StringComparison.Ordinal)))));
        Bad("a line put in its place from another farm's log", Text(With(2, Sealed(_lines[2].Replace("Long Acre", "Short Acre", StringComparison.Ordinal)))));
        Bad("a number raised, with a hash that is right", Text(With(4, Sealed(_lines[4].Replace("\"number\":5", "\"number\":7", StringComparison.Ordinal)))));
        Bad("all of it: a table of animals", TemporaryFarm.Animals);
        Bad("tabs put in, with CRLF", Text([.. _lines.Select(line => "\t" + line)], "\r\n"));
    }

    /// <summary>What only somebody can see who has noted the last hash elsewhere.</summary>
    private void KeptHash()
    {
        Row("the last line taken out", Text(_lines[..^1]));
        Row("the last line taken out; its hash was noted elsewhere", Text(_lines[..^1]), "--log-hash", _lastHash);
        Row("all lines written anew with other words, each hash right", Text(Anew()));
        Row("all lines written anew with other words, each hash right; the last hash was noted elsewhere", Text(Anew()), "--log-hash", _lastHash);
        Row("the file taken away", null);
        Row("the file taken away; the last hash was noted elsewhere", null, "--log-hash", _lastHash);
    }

    private void Good(string what, string log)
    {
        Row(what, log).Code.ShouldBe(ExitCode.Done, what);

        // And it is written on, as a log that still holds.
        _farm.Run("draft", "spring.byre").Out.ShouldContain("In the log: judging-log.jsonl, number 6, ");
        _farm.Run("check", "spring.byre").Code.ShouldBe(ExitCode.Done, what);
    }

    private void Bad(string what, string log) => Row(what, log).Code.ShouldBe(ExitCode.Bad, what);

    private Run Row(string what, string? log, params string[] more)
    {
        File.Delete(_farm.At("judging-log.jsonl"));
        if (log is not null)
        {
            File.WriteAllText(_farm.At("judging-log.jsonl"), log);
        }

        var run = _farm.Run(["check", "spring.byre", .. more]);
        var problems = run.Err.Split('\n').Where(line => line.StartsWith("judging-log", StringComparison.Ordinal)).Select(line => line["judging-log.jsonl:".Length..]).ToList();
        var shown = problems.Count > 0 ? string.Join("; ", problems) : run.Out.Split('\n').FirstOrDefault(line => line.StartsWith("judging-log", StringComparison.Ordinal)) ?? "nothing of a log";
        _table.Append(CultureInfo.InvariantCulture, $"| {what} | {Without.Digests(shown)} |\n");
        return run;
    }

    private string[] With(int at, string line) => [.. _lines.Select((old, i) => i == at ? line : old)];

    private List<string> Anew()
    {
        var lines = new List<string>();
        foreach (var line in _lines)
        {
            var words = line.Replace("\"command\":\"draft\"", "\"command\":\"plan\"", StringComparison.Ordinal);
            lines.Add(Sealed(lines.Count == 0 ? words : words.Replace(HashOn(_lines[lines.Count - 1]), HashOn(lines[^1]), StringComparison.Ordinal)));
        }

        return lines;
    }

    private static string Text(IEnumerable<string> lines, string end = "\n") => string.Concat(lines.Select(line => line + end));

    private static string HashOn(string line) => line[(line.LastIndexOf("sha256:", StringComparison.Ordinal))..^2];

    private static string Turned(string hash) => hash[..^1] + (hash[^1] == '0' ? '1' : '0');

    /// <summary>A line with the hash that its words ask for, made here by the book: the SHA-256 of all its bytes before the hash.</summary>
    private static string Sealed(string line)
    {
        var words = line[..line.LastIndexOf(",\"hash\":", StringComparison.Ordinal)];
        return $"{words},\"hash\":\"sha256:{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(words)))}\"}}";
    }
}
