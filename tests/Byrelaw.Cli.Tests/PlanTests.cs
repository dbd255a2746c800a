using Byrelaw.Planning;
using Byrelaw.Planning.Sessions;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Cli.Tests;

/// <summary>Plans of the example farms, as people read them.</summary>
public sealed class PlanTests(PlanTests.InOctober october, PlanTests.InJune june) : IClassFixture<PlanTests.InOctober>, IClassFixture<PlanTests.InJune>, IDisposable
{
    private const string WithyBend = "examples/withy-bend/spring-2026.byre";
    private const string LateStart = "examples/late-start/late-2026.byre";

    private readonly string _folder = Directory.CreateTempSubdirectory("byrelaw-plan-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_plan_of_the_first_morning_reads_as_approved()
    {
        october.Run.Code.ShouldBe(ExitCode.Done, "rows of the example cannot be read, on purpose; they are told");
        Snapshot.Verify(Said(october.Run, october.Folder) + "\n" + File.ReadAllText(Path.Combine(october.Folder, "plan/index.md")));
    }

    [Fact]
    public void The_farmers_page_reads_as_approved()
    {
        Snapshot.Verify(File.ReadAllText(Path.Combine(october.Folder, "plan/expectations.md")));
    }

    [Theory]
    [InlineData("hormones", "2026-10-04-session-1-hormones")]
    [InlineData("scans", "2026-10-18-session-1-scans")]
    [InlineData("transfer", "2026-10-20-session-1-transfer")]
    public void A_mornings_preview_reads_as_approved(string name, string page)
    {
        Snapshot.Verify(File.ReadAllText(Path.Combine(october.Folder, $"plan/sheets/{page}.md")), name);
    }

    [Fact]
    public void A_preview_has_no_box_no_blank_and_no_dose_and_says_whom_to_take_as_in_calf()
    {
        foreach (var page in Directory.GetFiles(Path.Combine(october.Folder, "plan/sheets"), "*.md"))
        {
            var text = File.ReadAllText(page);
            text.ShouldContain("A preview: it has no boxes");
            text.ShouldContain("**Take as in calf**: ");
            text.ShouldNotContain("☐");
            text.ShouldNotContain("___");
            System.Text.RegularExpressions.Regex.IsMatch(text, @"\d\s?(ml|mg|mcg|µg|g|cc|IU)\b").ShouldBeFalse(page);
        }
    }

    [Fact]
    public void A_farm_that_starts_too_late_is_told_so_and_which_visits_there_are()
    {
        var run = Plan(LateStart);
        run.Out.ShouldContain("Too late for this season");
        var page = File.ReadAllText(Path.Combine(_folder, "plan/index.md"));
        Snapshot.Verify(Said(run, _folder) + "\n" + page[..page.IndexOf("## What must be done by when", StringComparison.Ordinal)]);
    }

    [Fact]
    public void A_plan_made_in_time_has_nothing_past_and_drawn_up_again_keeps_every_entry_of_its_calendar()
    {
        june.Run.Code.ShouldBe(ExitCode.Done);
        june.Run.Out.ShouldNotContain("PAST");
        File.ReadAllText(Path.Combine(june.Folder, "plan/index.md")).ShouldNotContain("## Past already");
        var (first, again) = (Uids(june.Folder), Uids(october.Folder));
        first.Count.ShouldBe(first.Distinct().Count());
        first.Count.ShouldBeGreaterThan(20);
        first.Where(uid => !uid.Contains("task", StringComparison.Ordinal)).Except(again).ShouldBeEmpty("an entry under another name would be doubled");
    }

    [Fact]
    public void The_page_of_two_kinds_of_farm_says_what_the_program_writes()
    {
        var year = Plan("examples/long-acre/weekly-2026.byre");
        year.Code.ShouldBe(ExitCode.Done);
        ExecutedPage.Verify("docs/two-kinds-of-farm.md", fence => fence.Rest.Split(' ') is var words && fence.Rest.Length == 0 ? null : (fence.Language, words[0]) switch
        {
            ("text", "june") when words[1] == "tasks" => Paragraph(june.Run.Out, "  Start by"),
            ("text", "june") => string.Concat(june.Run.Out.Split('\n').Take(int.Parse(words[1], CultureInfo.InvariantCulture)).Select(line => line + "\n")),
            ("text", "october") => Paragraph(october.Run.Out, "  session"),
            ("text", _) => Said(year, _folder).Split("\nThe whole plan")[0],
            ("csv", _) => Lines(Repository.At("examples/withy-bend/records/events.csv"), [1, .. words[1..].Select(word => int.Parse(word, CultureInfo.InvariantCulture))]),
            ("byre", _) => Lines(Repository.At(words[0]), FromTo(words[1..])),
            ("markdown", "october") => Rows(Path.Combine(october.Folder, $"plan/{words[1]}.md"), words[2..]),
            _ => Lines(Path.Combine(_folder, $"plan/{words[1]}.md"), FromTo(words[2..])),
        });
    }

    private static string Paragraph(string text, string first)
    {
        var from = text.IndexOf(first, StringComparison.Ordinal);
        return text[from..(text.IndexOf("\n\n", from, StringComparison.Ordinal) + 1)];
    }

    private static IEnumerable<int> FromTo(string[] words) => Enumerable.Range(int.Parse(words[0], CultureInfo.InvariantCulture), int.Parse(words[1], CultureInfo.InvariantCulture) - int.Parse(words[0], CultureInfo.InvariantCulture) + 1);

    private static string Lines(string file, IEnumerable<int> numbers) => File.ReadAllLines(file) is var lines ? string.Concat(numbers.Where(number => number <= lines.Length).Select(number => lines[number - 1] + "\n")) : "";

    /// <summary>The heading of the first table and the rows of these animals.</summary>
    private static string Rows(string page, string[] numbers)
    {
        var lines = File.ReadAllLines(page);
        var head = Array.FindIndex(lines, line => line.StartsWith("| mob", StringComparison.Ordinal));
        return string.Concat(lines[head..(head + 2)].Concat(numbers.Select(number => lines.First(line => line.Contains($"| **{number}** |", StringComparison.Ordinal)))).Select(line => line + "\n"));
    }

    [Theory]
    [InlineData("collection", "collection 1 day", "2026-10-09")]
    [InlineData("no-eggs", "no eggs", "2026-10-12")]
    [InlineData("courier", "no courier 1 day", "2026-10-20")]
    [InlineData("late-treatment", "Progesterone insert day 7, 1 day", "2026-10-12")]
    public void What_is_left_when_something_goes_wrong_reads_as_approved(string name, string slip, string heardOn)
    {
        var run = Run("plan", WithyBend, "--slip", slip, "--heard-on", heardOn);
        run.Code.ShouldBe(ExitCode.Done);
        Snapshot.Verify(run.Out, name);
    }

    [Fact]
    public void A_slip_that_is_not_understood_is_told_which_are()
    {
        var run = Run("plan", WithyBend, "--slip", "the bull got out");
        run.Code.ShouldBe(ExitCode.CouldNot);
        run.Err.ShouldContain("--slip does not understand `the bull got out`; it wants \"collection 1 day\"");
    }

    [Fact]
    public void A_session_that_is_not_there_is_told_how_many_there_are()
    {
        var run = Plan(LateStart, "--session", "9");
        run.Code.ShouldBe(ExitCode.CouldNot);
        run.Err.ShouldContain("the plan has 1 session; there is no session 9");
    }

    [Fact]
    public void One_session_alone_has_its_own_days_and_nobody_elses()
    {
        var one = OneSession.Of(october.Plan, 2)!;
        one.Sessions.ShouldHaveSingleItem().Number.ShouldBe(2);
        one.Calendar.Tasks.ShouldAllBe(task => task.Session == 2);
        MorningSheets.Of(one).ShouldAllBe(sheet => sheet.Session.Number == 2);
        OneSession.Of(october.Plan, 4).ShouldBeNull();
    }

    [Fact]
    public void Plan_and_sheets_tell_one_story_of_one_animal()
    {
        var (plan, sheets) = (october.Plan, MorningSheets.Of(october.Plan));
        var found = sheets.OfType<FindingSheet>().ToList();
        found.SelectMany(sheet => sheet.Rows.Select(row => (sheet.Date, sheet.Work, row.Who.Animal))).ShouldBeUnique();
        var told = plan.Sessions.SelectMany(session => session.ToAsk.Concat(session.WatchedIfKnown).Concat(session.DonorsToAsk)).SelectMany(animal => animal.ToFindOut.Select(one => (animal.Animal, one.Record.Kind.Id, Days: string.Join(';', one.Starts)))).ToHashSet();
        foreach (var (row, record) in found.SelectMany(sheet => sheet.Rows.SelectMany(row => row.Records.Select(record => (row, record)))))
        {
            told.ShouldContain((row.Who.Animal, record.Kind.Id, string.Join(';', record.Days)), $"{row.Who.Number}: {record.Kind.Name}");
        }

        foreach (var session in plan.Sessions)
        {
            var standBy = sheets.OfType<HormoneSheet>().Where(sheet => sheet.Session == session).SelectMany(sheet => sheet.Spares).Select(row => row.Who.Animal).ToHashSet();
            sheets.OfType<TransferSheet>().Where(sheet => sheet.Session == session).SelectMany(sheet => sheet.Spares).ShouldAllBe(row => standBy.Contains(row.Who.Animal), "nobody is ready who was not treated");
            found.Where(sheet => sheet.Session == session).SelectMany(sheet => sheet.Rows).ShouldAllBe(row => row.IsWatched == session.WatchedIfKnown.Any(animal => animal.Animal == row.Who.Animal));
        }
    }

    private static List<string> Uids(string folder) => [.. File.ReadLines(Path.Combine(folder, "plan/calendar.ics")).Where(line => line.StartsWith("UID:", StringComparison.Ordinal))];

    private Run Plan(string programme, params string[] more) => Run(["plan", programme, "--out", Path.Combine(_folder, "plan"), .. more]);

    /// <summary>The folder is shown as seen from the repository, wherever that lies.</summary>
    private static string Said(Run run, string folder) => run.Out.Replace(Doors.Plain(TextWriter.Null, TextWriter.Null, Repository.Root).Show(folder), "FOLDER", StringComparison.Ordinal);

    private static Run Run(params string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var code = ByrelawApp.Run(args, Doors.Plain(@out, err, Repository.Root) with { KeepsLog = false, Clock = new FixedClock { Now = new(2026, 12, 1, 17, 0, 0, TimeSpan.Zero) } });
        return new Run(code, @out.ToString(), err.ToString());
    }

    /// <summary>The example farm planned on the morning the first devices go in, once for all tests that read it.</summary>
    public sealed class InOctober : Planned
    {
        private readonly Lazy<Plan> _plan = new(() =>
        {
            var loaded = LoadedProgramme.Read(WithyBend, null, Doors.Plain(TextWriter.Null, TextWriter.Null, Repository.Root).Folder, _ => { })!;
            return Planner.Plan(loaded.Reading.Rulebook, loaded.Herd);
        });

        public Plan Plan => _plan.Value;
    }

    /// <summary>And in June, as soon as the programme was agreed on.</summary>
    public sealed class InJune() : Planned("--known-on", "2026-06-20");

    public abstract class Planned : IDisposable
    {
        protected Planned(params string[] asked) => Run = PlanTests.Run(["plan", WithyBend, "--out", Path.Combine(Folder, "plan"), .. asked]);

        public string Folder { get; } = Directory.CreateTempSubdirectory("byrelaw-plan-").FullName;

        internal Run Run { get; }

        public void Dispose()
        {
            Directory.Delete(Folder, recursive: true);
            GC.SuppressFinalize(this);
        }
    }
}
