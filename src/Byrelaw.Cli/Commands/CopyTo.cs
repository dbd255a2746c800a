namespace Byrelaw.Cli.Commands;

/// <summary><c>records --to DIR</c>: the records as they are read, for others to use.</summary>
/// <param name="Folder">As given; null where nothing is to be written.</param>
/// <param name="IsWorkbook">Whether they become one workbook.</param>
internal sealed record CopyTo(string? Folder, bool IsWorkbook)
{
    /// <summary>Refuses before anything is read.</summary>
    /// <exception cref="CannotDoException">There is no name, or something lies there.</exception>
    public void Check(Doors doors)
    {
        if (Folder is null)
        {
            if (IsWorkbook)
            {
                throw new CannotDoException("--workbook wants --to DIR: where the workbook goes");
            }

            return;
        }

        if (string.IsNullOrWhiteSpace(Folder))
        {
            throw new CannotDoException("--to wants the name of a folder");
        }

        var full = doors.Full(Folder);
        if (File.Exists(full) || (Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any()))
        {
            throw new CannotDoException($"{Folder} is {(File.Exists(full) ? "a file" : "not empty")}; nothing was written. Give a new folder");
        }
    }

    /// <summary>Writes all of it, or nothing.</summary>
    public void Write(HerdAsRead read, Herd herd, RecordKeeping? keeping, TextWriter @out, Doors doors)
    {
        var files = IsWorkbook ? read.AsWorkbook() : read.AsCsv();
        FilesTogether.Write(doors.Full(Folder!), files, onlyNew: true);
        @out.Write($"\nWritten: {Phrases.And([.. files.Select(file => $"{doors.Show(doors.Full(Folder!))}/{file.Path}")])}\n");
        var coverage = herd.Coverage;
        var shorter = herd.Vocabulary.Kinds
            .Where(kind => keeping is { Sources.IsEmpty: false } && coverage.Since[kind.Id] < Day.End && coverage.Reach[kind.Id] > Day.Start && coverage.Reach[kind.Id] < coverage.KnownDay && !coverage.IsSinceHerLast(kind.Id))
            .GroupBy(kind => coverage.Reach[kind.Id]).OrderBy(kinds => kinds.Key).ToList();
        foreach (var kinds in shorter)
        {
            @out.Write($"The files do not say how far each source reached. Promise {Phrases.And([.. kinds.Select(kind => kind.Name)])} `until {LocalDatePattern.Iso.Format(Day.Date(kinds.Key))}` where you read them.\n");
        }

        var last = herd.Vocabulary.Kinds.Where(kind => coverage.IsSinceHerLast(kind.Id)).Select(kind => kind.Name).ToList();
        if (last.Count > 0)
        {
            @out.Write($"Nor do they say that each animal's {Phrases.And(last)} was the last: nothing more is promised of it where you read them.\n");
        }

        // What a rule file says of its words stands there still; what stood in the farm's own files does not.
        (string What, string Kind)[] aside =
        [
            .. herd.Doubted.OfType<MayBeOverlooked>().Where(one => one.In != OverlookedIn.RuleFile).Select(one => ($"“{one.Hint.Word}”", one.Fallen.Name)),
            .. herd.Doubted.OfType<FilesNotRead>().SelectMany(one => one.Fallen.Select(kind => (Phrases.And([.. one.Files]), kind.Name))),
        ];
        if (aside.Length > 0)
        {
            @out.Write($"What sets promises aside here does not stand in them: {Phrases.And([.. aside.Select(one => one.What).Distinct()])}. Of what was written promise nothing of {Phrases.And([.. aside.Select(one => one.Kind).Distinct()])}, or mend it here first and write it anew.\n");
        }
    }
}
