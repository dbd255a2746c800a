namespace Byrelaw.Cli.Tests;

/// <summary>A small farm in a folder of its own, and the program run in that folder as from a pipe.</summary>
internal sealed class TemporaryFarm : IDisposable
{
    public const string Vocabulary =
        """
        event calving            also calved
        event mating
        event sale               leaves the herd
        event purchase           joins the herd
        event transfer
        event drying off
        event bull in
        event bull out
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        test pregnancy test      answers pregnant, empty  in the yards, with method is one of ultrasound, hand, blank is hand
        fact origin              is one of home-bred, bought
        measure body condition   on scale 1 to 10
        fact official identity   is identity

        """;

    public const string Rules =
        """
        use "vocabulary.byre"

        rules for recipients

        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "The uterus needs about eight weeks to clean up after calving."
          source "common practice, no source"

        safety rule "Not in calf"
          needs any of
            - no mating since last calving
            - latest pregnancy test from 28 days after last mating is empty
          because "Prostaglandin and the passing of a pipette end a pregnancy."
          source "common practice, no source"

        rule "Body condition"
          needs latest body condition in the last 45 days between 4.0 and 5.5
          because "A thin cow has nothing to spare for a pregnancy."
          source "common practice, no source"

        """;

    public const string Programme =
        """
        use "recipients.byre"

        records "records"
          up to 2026-09-20
          complete for calving, mating, transfer, drying off, purchase, pregnancy test, bull in, bull out since 2020-01-01

        programme "Long Acre, spring 2026"
          collection on 2026-10-12
          transfer 8 days after collection, over 2 days
          choose recipients from females, judged from first transfer to final transfer

        """;

    public const string Animals =
        """
        animal,official_id,born,sex,breed,mob
        1007,554000700041007,2021-08-10,F,,River
        1012,554000700041012,2021-08-11,F,,River
        1019,554000700041019,2021-08-12,F,,River
        1033,554000700041033,2021-08-13,F,,River
        1423,554000700041423,2022-08-14,F,,Hill

        """;

    public const string Events =
        """
        date,animal,kind,value,unit,note,recorded
        2026-07-20,1007,calving,,,,
        2026-07-21,1012,calving,,,,
        2026-07-22,1019,calving,,,,
        2026-07-23,1033,calving,,,,
        2026-09-07,1423,calving,,,,
        2026-08-25,1019,mating,,,,
        2026-09-18,1007,body condition,4.8,,,
        2026-09-18,1012,body condition,4.0,,,
        2026-09-18,1019,body condition,4.5,,,
        2026-09-18,1033,body condition,3.5,,,
        2026-09-18,1423,body condition,5.0,,,

        """;

    public TemporaryFarm()
    {
        Write("vocabulary.byre", Vocabulary);
        Write("recipients.byre", Rules);
        Write("spring.byre", Programme);
        Write("records/animals.csv", Animals);
        Write("records/events.csv", Events);
    }

    /// <summary>Stands still unless a test sets it.</summary>
    public FixedClock Clock { get; } = new();

    public string Folder { get; } = Directory.CreateTempSubdirectory("byrelaw-farm-").FullName;

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public string At(string path) => Path.Combine(Folder, path);

    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text.ReplaceLineEndings("\n"));
    }

    /// <summary>Writes more at the end of a file.</summary>
    public void Append(string path, string text) => File.AppendAllText(At(path), text);

    public void Change(string path, string from, string to)
    {
        var text = File.ReadAllText(At(path));
        text.ShouldContain(from);
        File.WriteAllText(At(path), text.Replace(from, to, StringComparison.Ordinal));
    }

    /// <summary>Runs the program in the farm's folder.</summary>
    public Run Run(params string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var code = ByrelawApp.Run(args, Doors.Plain(@out, err, Folder) with { Clock = Clock });
        return new Run(code, @out.ToString(), err.ToString());
    }
}

/// <summary>What a run came to.</summary>
internal sealed record Run(int Code, string Out, string Err)
{
    /// <summary>All of it in one text, for an approved copy.</summary>
    public override string ToString() => $"exit code {Code}\n\n--- answers\n{Out}\n--- problems\n{Err}";

    public void ShouldBeOneClearLine(string part)
    {
        Code.ShouldBe(ExitCode.CouldNot);
        Out.ShouldBeEmpty();
        Err.TrimEnd('\n').ShouldNotContain('\n');
        Err.ShouldStartWith("byrelaw: ");
        Err.ShouldContain(part);
    }
}
