using Byrelaw.Judging.Promises;
using Byrelaw.Planning.Sessions;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw draft PROGRAMME --each-herd --format ndjson</c>: every herd of the records, one after another, a line for each animal, list and session,
/// and one for each herd.</summary>
internal static class EachHerd
{
    /// <summary>Judges them.</summary>
    public static int Run(string programme, bool isEach, string format, string? herd, string? folder, AskedDays days, Doors doors)
    {
        if (!isEach || format != "ndjson" || herd is not null || folder is not null)
        {
            throw new CannotDoException(!isEach ? "--format ndjson wants --each-herd; --format json writes one herd"
                : format != "ndjson" ? "--each-herd wants --format ndjson: a line for each animal and herd"
                : herd is not null ? "give --herd NAME or --each-herd, not both"
                : "--each-herd writes lines to the standard output and no folder; leave out --out");
        }

        var problems = new Problems();
        if (LoadedProgramme.ReadProgramme(programme, days.KnownOn, doors.Folder, problems.Add, doors.Today, days.RecordsTo) is not { } reading)
        {
            return DraftCommand.NotJudged(problems, json: false, doors);
        }

        problems.Print(doors);
        if (reading.Rulebook.Records is not { Sources.IsEmpty: false } keeping)
        {
            throw new CannotDoException("these records are of one herd; --each-herd wants sources that say which herd a row is of: `herd in` below `from`");
        }

        var records = RecordsFolder.Of(keeping.Folder, doors.Full(programme));
        var herds = HerdFolder.Open(records, doors.Show(records), reading.Rulebook.Vocabulary, keeping);
        if (herds.Herds.IsEmpty)
        {
            throw new CannotDoException("nothing says which herd a row is of; say it in a line such as `herd in \"Herd\"` below each `from`");
        }

        if (herds.WithoutHerd > 0)
        {
            doors.Err.WriteLine($"{Numbers.Count(herds.WithoutHerd, "animal stands", "animals stand")} in no herd and {(herds.WithoutHerd == 1 ? "is" : "are")} not judged.");
        }

        using var interruption = doors.Interruptions();
        var isBad = problems.Errors > 0;
        foreach (var name in herds.Herds)
        {
            foreach (var (line, isGood) in Lines(reading, herds, name, days, doors.IsStrict))
            {
                if (interruption.IsWanted)
                {
                    doors.Err.WriteLine("byrelaw: stopped; the lines above are whole, the herds that follow are not judged");
                    return ExitCode.CouldNot;
                }

                doors.Out.Write(line);
                doors.Out.Write('\n');
                isBad |= !isGood;
            }

            doors.Out.Flush();
        }

        return isBad ? ExitCode.Bad : ExitCode.Done;
    }

    /// <summary>The lines of one herd, its own last; and whether it could be judged.</summary>
    private static IEnumerable<(string Line, bool IsGood)> Lines(RulebookReading reading, HerdFolder herds, string name, AskedDays days, bool isStrict)
    {
        if (Judged(reading, herds, name, days, out var why) is not { } draft)
        {
            yield return (HerdLines.NotJudged(name, why), false);
            yield break;
        }

        foreach (var line in HerdLines.OfAnimals(draft, name))
        {
            yield return (line, true);
        }

        yield return (HerdLines.OfHerd(draft, name), !draft.Lists.Any(list => list.IsBroken) && !draft.Herd.LedgerIsBroken && !(isStrict && draft.Herd.Problems.Any(problem => problem.Severity == Severity.Error)));
    }

    private static Draft? Judged(RulebookReading reading, HerdFolder herds, string name, AskedDays days, out string why)
    {
        why = "";
        try
        {
            var herd = Believed.Of(reading.Rulebook, herds.Read(name, days.KnownOn));
            if (herd.Count > 0)
            {
                return SessionDraft.Of(reading.Rulebook, herd, days.KnownOn, days.On);
            }

            why = "no source says of an animal that it is in this herd";
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            // One herd that trips the program up must not keep the others from their answers.
            why = exception is RecordsNotFoundException ? exception.Message : $"something went wrong inside the program, not in your files ({exception.GetType().Name}: {exception.Message})";
        }

        return null;
    }
}
