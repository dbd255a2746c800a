using Byrelaw.Judging.Supposing;
using Byrelaw.Language.Reading;
using Byrelaw.Planning.Sessions;
using Byrelaw.Reporting.Causes;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw why PROGRAMME ANIMAL</c>: one animal's explanation on the terminal.</summary>
internal static class WhyCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var animal = new Argument<string>("ANIMAL") { Description = "Her number on the farm." };
        var all = new Option<bool>("--all") { Description = "List the rules that are met, too." };
        var (on, knownOn, format) = (SharedOptions.On(), SharedOptions.KnownOn(), SharedOptions.Format());
        var (herd, recordsTo, strict) = (SharedOptions.Herd(), SharedOptions.RecordsTo(), SharedOptions.Strict());
        var session = SessionAskedFor.Option("Which session's days, from 1; without it the first's, with her answer in each of the others.");
        var suppose = new Option<string[]>("--suppose") { Description = "Judge her as if this line stood in the book, such as \"bull out 2026-08-29\"; it may stand several times.", HelpName = "LINE" };
        var command = new Command("why", "Explain one animal's answer.") { programme, animal, all, session, suppose, on, knownOn, recordsTo, herd, strict, format };
        command.SetAction(parsed => Run(
            parsed.GetValue(programme)!, parsed.GetValue(animal)!,
            new Asked(
                parsed.GetValue(all), parsed.GetValue(session), parsed.GetValue(suppose) ?? [], new(parsed.GetValue(on), parsed.GetValue(knownOn), SharedOptions.Reached(parsed.GetValue(recordsTo), doors)),
                parsed.GetValue(herd), parsed.GetValue(format) == "json"),
            doors with { IsStrict = parsed.GetValue(strict) }));
        return command;
    }

    private static int Run(string programme, string number, Asked asked, Doors doors)
    {
        var problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, asked.Days.KnownOn, doors.Folder, problems.Add, doors.Today, asked.Herd, asked.Days.RecordsTo);
        problems.LedgerIsBroken = loaded?.Herd.LedgerIsBroken == true;
        problems.BringTogether(ProblemCauses.Sorted(loaded is null ? [] : ProblemCauses.Of(loaded.Herd)));
        if (loaded is null)
        {
            return DraftCommand.NotJudged(problems, asked.Json, doors);
        }

        var animal = AnimalAskedFor.Find(number, loaded.Herd);
        if (Supposed(loaded, asked.Suppose, loaded.Herd.Numbers[animal], problems) is not { } rows)
        {
            problems.Print(doors);
            return ExitCode.CouldNot;
        }

        SessionAskedFor.Check(loaded.Reading.Rulebook, asked.Session, asked.Days.On);
        var rulebook = SessionAskedFor.In(loaded.Reading.Rulebook, asked.Session);
        var herd = rows.IsEmpty ? loaded.Herd : Farm(programme, rulebook, asked, doors).Herd(new Supposition { Records = new() { Rows = rows } });
        ImmutableArray<Draft> sessions = asked.Days.On is null ? SessionDraft.OfHer(loaded.Reading.Rulebook, herd, animal, asked.Days.KnownOn, asPlanned: rows.IsEmpty) : [];
        var draft = sessions.IsEmpty ? new Judge(rulebook, herd, asked.Days.KnownOn).JudgeHer(animal, asked.Days.On) : sessions[(asked.Session ?? 1) - 1];
        if (asked.Json)
        {
            doors.Out.WriteLine(JsonText.Of(draft, supposed: asked.Suppose));
        }
        else
        {
            doors.Out.Write(SupposedText.Of(asked.Suppose, doors.OutInk));
            var sections = draft.Lists.Select(list => WhyText.Of(new AnimalReport(new ListReport(draft, list), list.Animals[0]), asked.All, doors.OutInk));
            doors.Out.Write(string.Join("\n", sections));
            doors.Out.Write(asked.Session is null ? SessionAnswers.Of(sessions, doors.OutInk) : "");
        }

        SharedOptions.SayRecordsTo(asked.Days.RecordsTo, loaded.Herd, doors);
        problems.Add(UnknownAnimals.Waived(loaded.Reading.Rulebook, loaded.Herd).Concat(UnknownMobs.In(loaded.Reading.Rulebook, loaded.Herd)));
        problems.Print(doors);
        return problems.Ends(doors);
    }

    /// <summary>The rows that are supposed to stand in the book; null, and what is wrong, where a line cannot be read.</summary>
    private static ImmutableArray<SupposedRow>? Supposed(LoadedProgramme loaded, string[] lines, string number, Problems problems)
    {
        var rows = ImmutableArray.CreateBuilder<SupposedRow>();
        foreach (var line in lines)
        {
            var (record, wrong) = SupposedLine.Read(loaded.Reading, line);
            problems.Add(wrong);
            if (record is null)
            {
                return !wrong.IsEmpty ? null : throw new CannotDoException(
                    $"--suppose \"{line}\" is not one thing on record of her; write it as in a worked example, such as \"bull out 2026-08-29\" or \"pregnancy test 2026-10-03 empty\", and --suppose once for each");
            }

            rows.Add(new SupposedRow(record.Date, number, record.Kind.Name, record.Value, record.Unit) { Details = [.. record.Details.Select(detail => (detail.Detail, detail.Value))] });
        }

        return rows.ToImmutable();
    }

    private static SupposedFarm Farm(string programme, Rulebook rulebook, Asked asked, Doors doors)
    {
        var folder = RecordsFolder.Of(rulebook.Records!.Folder, doors.Full(programme));
        return new SupposedFarm(rulebook, FarmRecords.In(folder, doors.Show(folder), rulebook.Vocabulary, rulebook.Records, asked.Herd), asked.Days.KnownOn);
    }

    /// <summary>What the command was asked for besides the animal.</summary>
    private sealed record Asked(bool All, int? Session, string[] Suppose, AskedDays Days, string? Herd, bool Json);
}
