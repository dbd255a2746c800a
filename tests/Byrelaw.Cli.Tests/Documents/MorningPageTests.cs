namespace Byrelaw.Cli.Tests.Documents;

/// <summary>A morning at Withy Bend, from its sheet to the record to the next list, is as the page tells it.</summary>
public sealed class MorningPageTests : IDisposable
{
    private const string Programme = "examples/withy-bend/spring-2026.byre";

    private readonly CopiedExamples _farm = new("examples/withy-bend");

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void Each_step_is_as_the_page_tells_it()
    {
        var sheet = "";
        ExecutedPage.Verify("docs/sheets.md", fence => fence.Rest switch
        {
            "plan" => Drawn(out sheet),
            "filled" => Filled(sheet, ("1031", "yes", ""), ("1087", "yes", ""), ("1088", "yes", ""), ("1091", "yes", ""), ("1092", "yes", ""), ("1093", "no", "not found"), ("1096", "", ""), ("1098", "yes", ""), ("1102", "yes", ""),
                ("1108", "yes", ""), ("1111", "no", "not needed"), ("1089", "no", "not needed")),
            "record" => Said("record", Programme, sheet, "--by", "farmer", "--out", "rehearsed"),
            "again" => Again(sheet),
            "draft" => Treatment(Said("draft", $"rehearsed/{Programme}", "--session", "1")),
            _ => null,
        });
    }

    /// <summary>The command, and what it says of the list for treatment.</summary>
    private static string Treatment(string said) => said.Split('\n')[0] + "\n" + said.Split("\n\n").Single(list => list.StartsWith("Treatment", StringComparison.Ordinal)) + "\n";

    /// <summary>As far as the table of those to treat.</summary>
    private string Drawn(out string sheet)
    {
        var said = Said("plan", Programme, "--rehearse", "2026-10-04");
        sheet = $"sheets/{Path.GetFileName(Directory.GetFiles(_farm.At("sheets"), "REHEARSAL-H1004-*.csv").Single())}";
        return said[..said.IndexOf("\nDevices in: …", StringComparison.Ordinal)].TrimEnd('\n') + "\n";
    }

    private string Filled(string sheet, params (string Animal, string Done, string Reason)[] rows)
    {
        var lines = File.ReadAllLines(_farm.At(sheet)).Select(line => line.Split(',')).ToArray();
        var (animal, done, reason) = (Array.IndexOf(lines[0], "animal"), Array.IndexOf(lines[0], "done"), Array.IndexOf(lines[0], "reason"));
        lines.Length.ShouldBe(rows.Length + 1);
        foreach (var row in rows)
        {
            var line = lines.Single(line => line[animal] == row.Animal);
            (line[done], line[reason]) = (row.Done, row.Reason);
        }

        File.WriteAllText(_farm.At(sheet), string.Concat(lines.Select(line => string.Join(',', line) + "\r\n")));
        return string.Concat(lines.Select(line => $"{line[1],-5}{line[animal],-8}{line[done],-6}{line[reason]}".TrimEnd() + "\n"));
    }

    private string Again(string sheet)
    {
        var lines = File.ReadAllLines(_farm.At(sheet)).Select(line => line.Split(',')).ToArray();
        lines.Single(line => line[4] == "1096")[5] = "yes";
        File.WriteAllText(_farm.At(sheet), string.Concat(lines.Select(line => string.Join(',', line) + "\r\n")));
        return Said("record", Programme, sheet, "--by", "farmer", "--out", "rehearsed");
    }

    private string Said(params string[] args)
    {
        var run = _farm.Run(args);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        return $"$ byrelaw {string.Join(' ', args)}\n{Without.Digests(run.Out)}";
    }
}
