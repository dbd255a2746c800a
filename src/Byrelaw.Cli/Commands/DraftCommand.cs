using Byrelaw.Planning.Sessions;
using Byrelaw.Reporting.Causes;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw draft PROGRAMME</c>: judges every animal of every list and writes the report.</summary>
internal static class DraftCommand
{
    private const string DefaultOut = "out";

    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var folder = new Option<string?>("--out") { Description = $"The folder for the report; without it: {DefaultOut}, and none with --format json.", HelpName = "DIR" };
        var (on, knownOn, by, format) = (SharedOptions.On(), SharedOptions.KnownOn(), SharedOptions.By(), SharedOptions.Format("ndjson"));
        var (herd, recordsTo, strict) = (SharedOptions.Herd(), SharedOptions.RecordsTo(), SharedOptions.Strict());
        var pages = new Option<string?>("--pages")
        {
            Description = $"Which animals have a page of their own: all, asked (Ready, On course or Ask at some session, who is or may be in calf, is waived a rule or contradicts her records), none, or numbers with commas; without it all up to {PagesAsked.AllUpTo} animals, and of more those asked.",
            HelpName = "WHICH",
        };
        var session = SessionAskedFor.Option("Judge for this session only, from 1; without it for every one that is not over.");
        var each = new Option<bool>("--each-herd") { Description = "Judge every herd of the records, one after another; with --format ndjson." };
        var command = new Command("draft", "Judge every animal of every list and write the draft lists with a page for every animal.")
        {
            programme, folder, pages, session, on, knownOn, recordsTo, herd, each, by, strict, format,
        };
        command.SetAction(parsed =>
        {
            var days = new AskedDays(parsed.GetValue(on), parsed.GetValue(knownOn), SharedOptions.Reached(parsed.GetValue(recordsTo), doors));
            return parsed.GetValue(each) || parsed.GetValue(format) == "ndjson"
                ? EachHerd.Run(parsed.GetValue(programme)!, parsed.GetValue(each), parsed.GetValue(format)!, parsed.GetValue(herd), parsed.GetValue(folder), days, doors with { IsStrict = parsed.GetValue(strict) })
                : Run(parsed.GetValue(programme)!, parsed.GetValue(folder), new Asked(parsed.GetValue(session), days, parsed.GetValue(herd), parsed.GetValue(pages)), parsed.GetValue(by), parsed.GetValue(format) == "json", doors with { IsStrict = parsed.GetValue(strict) });
        });
        return command;
    }

    private static int Run(string programme, string? folder, Asked asked, string? by, bool json, Doors doors)
    {
        if (folder is "")
        {
            throw new CannotDoException("--out wants the name of a folder");
        }

        var target = folder ?? (json ? null : DefaultOut);
        if (target is not null)
        {
            ReportFolder.Check(doors.Full(target));
        }

        var problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, asked.Days.KnownOn, doors.Folder, problems.Add, doors.Today, asked.Herd, asked.Days.RecordsTo);
        problems.LedgerIsBroken = loaded?.Herd.LedgerIsBroken == true;
        problems.BringTogether(ProblemCauses.Sorted(loaded is null ? [] : ProblemCauses.Of(loaded.Herd)));
        if (loaded is null)
        {
            return NotJudged(problems, json, doors);
        }

        SessionAskedFor.Check(loaded.Reading.Rulebook, asked.Session, asked.Days.On);
        SharedOptions.SayRecordsTo(asked.Days.RecordsTo, loaded.Herd, doors);
        var draft = Judge(loaded, asked, doors);
        var pages = new PagesAsked(asked.Pages);
        if (pages.Unknown(draft).FirstOrDefault() is { } stranger)
        {
            throw new CannotDoException($"--pages wants all, asked, none, or numbers of animals with commas; `{stranger}` is none of them, and no animal of these lists");
        }

        problems.Add(UnknownAnimals.In(draft));
        problems.Add(UnknownMobs.In(draft.Rulebook, draft.Herd));
        problems.Print(doors);
        var logged = LogOfJudging.Add(draft, "draft", programme, by, doors);
        var inputs = InputsOf(loaded, programme, target is null ? doors.Here : doors.Full(target), asked, doors);
        if (target is not null)
        {
            Write(draft, inputs, doors.Full(target), doors);
        }

        doors.Out.Write(json ? JsonText.Of(draft, inputs) + "\n" : DraftText.Of(draft, doors.OutInk) + $"{WithPages(pages, draft)}: {doors.Show(doors.Full(target!))}/index.html\n{logged}");
        if (problems.All.Count > 0)
        {
            doors.Err.WriteLine($"{problems.Counted()}{(problems.Errors > 0 ? ". What they touch is in doubt, and doubt lets no animal through" : "")}.");
        }

        return draft.Lists.Any(list => list.IsBroken) ? ExitCode.Bad : problems.Ends(doors);
    }

    private static string WithPages(PagesAsked pages, Draft draft) => pages.For(draft.Herd) switch
    {
        "all" => "The lists and a page for every animal",
        "none" => "The lists",
        "asked" => $"The lists, and a page for every animal with whom something is to be done{(pages.IsLeftToSize ? $" ({draft.Herd.Count} animals; --pages all for a page each)" : "")}",
        _ => "The lists, and a page for each of those asked for",
    };

    /// <summary>Says why there is no programme to judge.</summary>
    public static int NotJudged(Problems problems, bool json, Doors doors)
    {
        problems.Print(doors);
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(problems.All));
        }

        doors.Err.WriteLine($"{problems.Counted()}. Nobody can be judged until they are mended: a broken rule lets no animal through.");
        return ExitCode.Bad;
    }

    private static Draft Judge(LoadedProgramme loaded, Asked asked, Doors doors)
    {
        using var bar = new ProgressBar(doors, "Judging");
        return SessionDraft.Of(loaded.Reading.Rulebook, loaded.Herd, asked.Days.KnownOn, asked.Days.On, asked.Session, bar);
    }

    /// <summary>What is judged, as seen from where the report goes: the two can be moved together.</summary>
    private static InputsJson InputsOf(LoadedProgramme loaded, string programme, string from, Asked asked, Doors doors)
    {
        var file = doors.Full(programme);
        var records = RecordsFolder.Of(loaded.Reading.Rulebook.Records!.Folder, file);
        return new InputsJson(Relative(from, file), Relative(from, records), Iso(asked.Days.On), Iso(asked.Days.KnownOn)) { Herd = asked.Herd, Pages = asked.Pages, Session = asked.Session, RecordsTo = Iso(asked.Days.RecordsTo) };
    }

    private static string Relative(string from, string path) => Path.GetRelativePath(from, path).Replace(Path.DirectorySeparatorChar, '/');

    private static string? Iso(LocalDate? date) => date is { } day ? LocalDatePattern.Iso.Format(day) : null;

    private static void Write(Draft draft, InputsJson inputs, string folder, Doors doors)
    {
        using var bar = new ProgressBar(doors, "Writing");
        var files = Report.FilesOf(draft, inputs);
        var kept = ReportFolder.Write(folder, Report.Of(draft, inputs), written => bar.Report((written, files)));
        KeptNotes.Say(kept, folder, doors);
    }

    /// <summary>What is to be judged.</summary>
    private sealed record Asked(int? Session, AskedDays Days, string? Herd, string? Pages);
}
