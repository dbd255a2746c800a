using System.Text.RegularExpressions;

namespace Byrelaw.Cli.Tests.Injection;

/// <summary>
/// Whatever stands in names, reasons, numbers and file names, nothing that a terminal, a calendar or a spreadsheet would act on comes out of any
/// command. What pages make of such words is tested beside the pages.
/// </summary>
public sealed partial class HostileFarmTests : IDisposable
{
    // Escapes of terminals (ECMA-48: colour, title, clearing the screen, a C1 introducer), marks that turn the direction of writing (Unicode Standard
    // Annex 9), markup, a formula (OWASP, "CSV Injection"), and parts of iCalendar and Markdown. Tried two by two: one where a name stands, one in
    // what is said of it; so that none hides another, both of a pair are of one kind, unseen or seen.
    private static readonly string[] Tricks =
    [
        "\u001b[31mred", "\u001b]0;title\u0007", "\u001b[2J", "\u009b31m", "\b\b\b\b", "\u202Etxt.exe", "\u2066x\u2069", "\u200Fx", "\u061Cx", "a\u2028b",
        "<script>alert(1)</script>", "=cmd|'/c calc'!A1", "@SUM(1)", "[x](javascript:alert(1))", "END:VEVENT", "DTSTART;VALUE=DATE:20200101", "| a | b |", "%s%n{0}",
    ];

    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    public static TheoryData<int> Pairs => [.. Enumerable.Range(0, Tricks.Length / 2)];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void In_the_records(int pair)
    {
        var (name, words) = Of(pair, trick => $"\"{trick.Replace("\"", "\"\"", StringComparison.Ordinal)}\"");
        _farm.Write("vocabulary.byre", TemporaryFarm.Vocabulary + "fact temperament\n  is one of quiet, wild\nfact remark is text\n");
        _farm.Write("records/animals.csv", TemporaryFarm.Animals
            .Replace("mob\n", "mob,temperament,remark\n", StringComparison.Ordinal).Replace(",River\n", $",{words},{words},{words}\n", StringComparison.Ordinal)
            .Replace(",Hill\n", ",Hill,,\n", StringComparison.Ordinal).Replace("1012,", name + ",", StringComparison.Ordinal));
        _farm.Write("records/events.csv", TemporaryFarm.Events
            .Replace("1012,", name + ",", StringComparison.Ordinal).Replace(",4.5,,,", $",4.5,{words},{words},", StringComparison.Ordinal)
            + $"2026-09-19,1007,{name},{words},,{words},\n{name},1019,mating,,,,{words}\n");
        EveryCommand();
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void In_the_rules(int pair)
    {
        var (name, words) = Of(pair, trick => trick.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal));
        _farm.Write("recipients.byre", TemporaryFarm.Rules.Replace("Body condition\"", $"Body condition {name}\"", StringComparison.Ordinal)
            .Replace("A thin cow", words, StringComparison.Ordinal).Replace("common practice", words, StringComparison.Ordinal) + $"\n# {words}\n");
        _farm.Write("spring.byre", TemporaryFarm.Programme.Replace("Long Acre", $"Long Acre {name}", StringComparison.Ordinal));
        EveryCommand();
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void In_the_names_of_files(int pair)
    {
        var (name, records) = Of(pair, trick => trick.Replace('/', '-').Replace("\"", "", StringComparison.Ordinal));
        File.Move(_farm.At("spring.byre"), _farm.At($"{name}.byre"));
        Directory.Move(_farm.At("records"), _farm.At($"{records} records"));
        _farm.Change($"{name}.byre", "records \"records\"", $"records \"{records} records\"");
        EveryCommand($"{name}.byre", $"{records} records", $"out {name}", $"{name}.pack");
    }

    private static (string First, string Second) Of(int pair, Func<string, string> written) => (written(Tricks[2 * pair]), written(Tricks[(2 * pair) + 1]));

    private void EveryCommand(string programme = "spring.byre", string records = "records", string report = "out", string pack = "new.pack")
    {
        string[][] commands =
        [
            ["check", programme], ["check", "--coverage", programme], ["check", "--practice", programme], ["tidy", "recipients.byre", "vocabulary.byre"], ["tidy", "--check", programme],
            ["records", records, "--rules", programme], ["records", records, "--format", "json"], ["draft", programme, "--out", report], ["draft", programme, "--format", "json"],
            ["why", programme, "1007", "--all"], ["why", programme, "nobody"], ["plan", programme, "--out", report + " plan"], ["tune", programme, "Eight weeks calved"],
            ["compare", programme, "recipients.byre"], ["carry", programme, "--to", "2027", "-o", "next " + programme], ["pack", programme, "-o", pack], ["unpack", pack, "there " + report],
            ["verify", report], ["new", report + " new"], ["key", pack + ".key"], ["draft", programme + "x"], ["unpack", programme, "there"], ["verify", programme],
        ];
        foreach (var command in commands)
        {
            // A name with such signs cannot be given on every command line; none may do harm.
            var run = _farm.Run(command);
            Harmless(run.Out, string.Join(' ', command));
            Harmless(run.Err, string.Join(' ', command));
        }

        foreach (var file in Directory.EnumerateFiles(_farm.Folder, "*", SearchOption.AllDirectories).Where(file => file.EndsWith(".ics", StringComparison.Ordinal)))
        {
            var text = File.ReadAllText(file);
            Harmless(text.Replace("\r\n", "\n", StringComparison.Ordinal), file);
            text.Split("\r\n").Count(line => line == "END:VEVENT").ShouldBe(text.Split("\r\n").Count(line => line == "BEGIN:VEVENT"), file);
            text.ShouldNotContain("\r\nDTSTART;VALUE=DATE:20200101");
        }

        foreach (var folder in new[] { report, report + " plan" }.Select(_farm.At).Where(Directory.Exists))
        {
            var files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToList();
            files.ShouldNotBeEmpty();
            files.ForEach(Written);
        }
    }

    /// <summary>A file that people open: nothing in it that is unseen, is run, or is taken for a formula.</summary>
    private static void Written(string file)
    {
        var text = File.ReadAllText(file).Replace("\r\n", "\n", StringComparison.Ordinal);
        Harmless(text, file);
        var danger = Path.GetExtension(file) switch
        {
            ".html" => MarkupInHtml().Match(text),
            ".md" => MarkupInMarkdown().Match(text),
            ".csv" => Formula().Match(text),
            _ => Match.Empty,
        };
        Assert.False(danger.Success, $"{file}: {danger.Value}");
    }

    [GeneratedRegex(@"<script>alert|href=""javascript", RegexOptions.IgnoreCase)]
    private static partial Regex MarkupInHtml();

    /// <summary>As it would be run: not after a backslash, which makes words of it.</summary>
    [GeneratedRegex(@"(?<!\\)<script>alert|(?<!\\)\]\(javascript", RegexOptions.IgnoreCase)]
    private static partial Regex MarkupInMarkdown();

    [GeneratedRegex(@"(^|[,\n])""?[=@+]")]
    private static partial Regex Formula();

    private static void Harmless(string text, string where)
    {
        foreach (var (line, number) in text.Split('\n').Select((line, i) => (line, i + 1)))
        {
            var at = line.IndexOfAny(Harmful);
            Assert.True(at < 0, $"{where}, line {number}: U+{(at < 0 ? 0 : line[at]):X4} in {line}");
        }
    }

    private static readonly char[] Harmful =
    [
        .. Enumerable.Range(0, 32).Where(c => c != '\t').Select(c => (char)c), .. Enumerable.Range(0x7F, 33).Select(c => (char)c),
        '\u200E', '\u200F', '\u061C', '\uFEFF', '\u2028', '\u2029', .. Enumerable.Range(0x202A, 5).Select(c => (char)c), .. Enumerable.Range(0x2066, 4).Select(c => (char)c),
    ];
}
