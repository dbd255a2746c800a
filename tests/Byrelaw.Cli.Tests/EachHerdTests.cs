using System.Text.Json;

namespace Byrelaw.Cli.Tests;

/// <summary>Many herds, one after another.</summary>
public sealed class EachHerdTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public EachHerdTests()
    {
        var rows = string.Concat(TemporaryFarm.Animals.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select((row, i) => row + (i == 0 ? ",herd" : i < 4 ? ",Long Acre" : ",Hill") + "\n"));
        _farm.Write("records/cows.csv", rows);
        _farm.Change("spring.byre", "\nprogramme", """

              from "cows.csv", a row for each animal
                animal in "animal"
                official identity in "official_id"
                born in "born"
                sex in "sex"
                mob in "mob"
                herd in "herd"
                leave out columns "breed"
              from "events.csv", a row for each event
                date in "date"
                animal in "animal"
                kind in "kind"
                value in "value"
                unit in "unit"
                note in "note"
                recorded in "recorded"

            programme
            """.ReplaceLineEndings("\n"));
    }

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Each_herds_lines_are_those_of_the_herd_alone(bool hasForgottenFile)
    {
        if (hasForgottenFile)
        {
            _farm.Write("records/Events-2026.csv", File.ReadAllLines(_farm.At("records/events.csv"))[0] + "\n2026-09-30,1007,heat,,,,\n");
        }

        var each = _farm.Run("draft", "spring.byre", "--each-herd", "--format", "ndjson");

        each.Code.ShouldBe(ExitCode.Done, each.Err);
        string[] lines = each.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        lines.Length.ShouldBe(7, "five animals on one list, two herds");
        var seen = 0;
        foreach (var herd in new[] { "Long Acre", "Hill" })
        {
            var alone = _farm.Run("draft", "spring.byre", "--herd", herd, "--format", "json");
            alone.Out.Contains("Events-2026.csv", StringComparison.Ordinal).ShouldBe(hasForgottenFile);
            using var draft = JsonDocument.Parse(alone.Out);
            draft.RootElement.GetProperty("inputs").GetProperty("herd").GetString().ShouldBe(herd);
            foreach (var animal in draft.RootElement.GetProperty("lists")[0].GetProperty("animals").EnumerateArray())
            {
                seen++;
                var whole = JsonSerializer.Serialize(animal);
                lines.ShouldContain(line => Alone(line) == whole && line.StartsWith($"{{\"herd\":\"{herd}\",\"list\":\"recipients\",\"session\":1,\"judged_from\":\"2026-10-20\"", StringComparison.Ordinal));
            }

            using var ofHerd = JsonDocument.Parse(lines.Single(line => line.StartsWith($"{{\"herd\":\"{herd}\",\"animals\"", StringComparison.Ordinal)));
            ofHerd.RootElement.GetProperty("records").GetString().ShouldBe(draft.RootElement.GetProperty("records").GetString());
            ofHerd.RootElement.GetProperty("lists")[0].GetProperty("counts").GetRawText().ShouldBe(JsonSerializer.Serialize(draft.RootElement.GetProperty("lists")[0].GetProperty("counts")));
        }

        seen.ShouldBe(5);
    }

    [Fact]
    public void Several_herds_want_one_to_be_named()
    {
        _farm.Run("draft", "spring.byre").ShouldBeOneClearLine("these records hold 2 herds (Hill, Long Acre); say which with `--herd NAME`");
        _farm.Run("why", "spring.byre", "1007", "--herd", "Hil").ShouldBeOneClearLine("perhaps `Hill` is meant");
        _farm.Run("why", "spring.byre", "1033", "--herd", "Hill").Code.ShouldBe(ExitCode.Done);
        _farm.Run("plan", "spring.byre").ShouldBeOneClearLine("say which with `--herd NAME`");
        _farm.Run("plan", "spring.byre", "--herd", "Hill", "--format", "json").Code.ShouldBe(ExitCode.Done);
        _farm.Run("plan", "spring.byre", "--herd", "Hill", "--sheet", "2026-10-04").ShouldBeOneClearLine("--herd");
        _farm.Run("tune", "spring.byre", "Eight weeks calved", "--herd", "Hil").ShouldBeOneClearLine("perhaps `Hill` is meant");
        _farm.Run("compare", "spring.byre", "spring.byre", "--herd", "Hill").ShouldBeOneClearLine("it wants --records FOLDER");
        _farm.Run("compare", "spring.byre", "spring.byre", "--records", "records", "--herd", "Hill").Code.ShouldBe(ExitCode.Done);
        _farm.Run("draft", "spring.byre", "--each-herd").ShouldBeOneClearLine("--each-herd wants --format ndjson");
        _farm.Run("draft", "spring.byre", "--format", "ndjson").ShouldBeOneClearLine("--format ndjson wants --each-herd");
    }

    [Fact]
    public void A_herd_without_animals_says_so_and_the_end_is_1()
    {
        _farm.Change("records/events.csv", "date,animal", "herd,date,animal");
        File.WriteAllText(_farm.At("records/events.csv"), "herd,date,animal,kind,value,unit,note,recorded\nVale,2026-08-25,777,mating,,,,\n");
        _farm.Change("spring.byre", "    unit in", "    herd in \"herd\"\n    unit in");

        var run = _farm.Run("draft", "spring.byre", "--each-herd", "--format", "ndjson");

        run.Code.ShouldBe(ExitCode.Bad, run.Err);
        run.Out.Split('\n').ShouldContain("{\"herd\":\"Vale\",\"not_judged\":\"no source says of an animal that it is in this herd\"}");
        run.Out.Split('\n').Count(line => line.Contains("\"answer\":", StringComparison.Ordinal) && !line.Contains("Vale", StringComparison.Ordinal)).ShouldBe(5);
    }

    [Fact]
    public void Interrupted_it_ends_between_two_lines_with_2()
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        using var lines = new Counted(@out, 3);
        var doors = Doors.Plain(lines, err, _farm.Folder) with
        {
            Clock = _farm.Clock,
            Interruptions = () =>
            {
                var interruption = new Interruption(ofTheProcess: false);
                lines.After = interruption.Now;
                return interruption;
            },
        };

        ByrelawApp.Run(["draft", "spring.byre", "--each-herd", "--format", "ndjson"], doors).ShouldBe(ExitCode.CouldNot);

        @out.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(3);
        @out.ToString().ShouldEndWith("}\n");
        err.ToString().ShouldContain("stopped");
    }

    /// <summary>The animal's object without what says where it belongs.</summary>
    private static string Alone(string line) => line.IndexOf("\"animal\":", StringComparison.Ordinal) is > 0 and var at
        ? JsonSerializer.Serialize(JsonDocument.Parse("{" + line[at..]).RootElement) : "";

    /// <summary>Calls something once so many lines are written.</summary>
    private sealed class Counted(StringWriter to, int lines) : TextWriter
    {
        private int _lines;

        public Action After { get; set; } = () => { };

        public override System.Text.Encoding Encoding => to.Encoding;

        public override void Write(char value)
        {
            to.Write(value);
            _lines += value == '\n' ? 1 : 0;
            if (_lines == lines && value == '\n')
            {
                After();
            }
        }
    }
}
