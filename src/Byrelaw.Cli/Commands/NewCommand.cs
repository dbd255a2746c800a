using Byrelaw.Language.Rulebooks.Words;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw new FOLDER</c>: starts a farm's folder. Never overwrites anything.</summary>
internal static class NewCommand
{
    private const string Records = "records";

    public static Command Make(Doors doors)
    {
        var folder = new Argument<string>("FOLDER") { Description = "A new or empty folder." };
        var from = new Option<string?>("--from") { Description = "A folder with the farm's own files: they are copied, and the lines that read them are suggested.", HelpName = "EXPORT" };
        var command = new Command("new", "Start a farm's folder: a programme to fill in, the records' headings or the farm's own files, the base rules by edition.") { folder, from };
        command.SetAction(parsed => Run(parsed.GetValue(folder)!, parsed.GetValue(from), doors));
        return command;
    }

    private static int Run(string folder, string? from, Doors doors)
    {
        if (string.IsNullOrWhiteSpace(folder))
        {
            throw new CannotDoException("new wants the name of a folder");
        }

        var target = Path.TrimEndingDirectorySeparator(doors.Full(folder));
        LeftOvers.ClearBeside(target);
        Refuse(target, folder);
        var name = PlainText.Clean(Path.GetFileName(target)) is { Length: > 0 } named ? named : "Our programme";
        var baseWords = BaseWords.Read(doors).Rulebook;
        var unread = new List<(string File, string Why)>();
        var files = from is null ? [.. NewFarm.Files(name, NewFarm.FactsOf(baseWords)).Select(file => (file.Path, Encoding.UTF8.GetBytes(file.Text.ReplaceLineEndings("\n"))))]
            : FromExport(name, Export(from, target, doors), baseWords.Vocabulary, unread, doors);
        WholeFolder.Write(target, (there, fresh) =>
        {
            // Somebody may have put files there while this run waited for its turn.
            Refuse(there, folder);
            foreach (var (path, bytes) in files)
            {
                WholeFolder.Put(fresh, path, bytes);
            }
        });
        Say(target, isFromFiles: from is not null, unread, doors);
        return unread.Count == 0 ? ExitCode.Done : ExitCode.Bad;
    }

    /// <summary>The programme that reads a farm's own files, and a copy of them.</summary>
    private static List<(string Path, byte[] Bytes)> FromExport(string name, string export, Vocabulary vocabulary, List<(string File, string Why)> unread, Doors doors)
    {
        var files = SuggestedRecords.FilesIn(export).Select(path => ($"{Records}/{SuggestedRecords.Relative(export, path)}", RegularFile.Read(path)!)).ToList();
        var programme = NewFarm.ProgrammeFrom(name, SuggestedRecords.Of(export, Records, vocabulary, doors.Today, unread: unread), doors.Today);
        if (unread.Count == files.Count)
        {
            throw new CannotDoException($"nothing was made, for no file there can be read: {string.Join("; ", unread.Select(one => $"{one.File}: {one.Why}"))}");
        }

        return [(NewFarm.Programme, Encoding.UTF8.GetBytes(programme.ReplaceLineEndings("\n"))), .. files];
    }

    private static string Export(string from, string target, Doors doors)
    {
        var full = Path.TrimEndingDirectorySeparator(doors.Full(from));
        return File.Exists(full) ? throw new CannotDoException($"{from} is a file; give the folder that it lies in")
            : !Directory.Exists(full) ? throw new CannotDoException($"no such folder: {from}")
            : target == full || target.StartsWith(full + Path.DirectorySeparatorChar, StringComparison.Ordinal) ? throw new CannotDoException($"the new folder would lie in {from}, whose files it copies; give another one")
            : SuggestedRecords.FilesIn(full).Any() ? full : throw new CannotDoException($"there is no file in {from}");
    }

    private static void Refuse(string target, string shown)
    {
        if (File.Exists(target))
        {
            throw new CannotDoException($"{shown} is a file; nothing was changed");
        }

        if (Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any())
        {
            throw new CannotDoException($"{shown} is not empty; nothing was changed. Give a new folder");
        }
    }

    private static void Say(string target, bool isFromFiles, List<(string File, string Why)> unread, Doors doors)
    {
        var shown = doors.Show(target);
        var file = $"{shown}/{NewFarm.Programme}";
        var quoted = file.Contains(' ', StringComparison.Ordinal) ? $"\"{file}\"" : file;
        var lines = File.ReadLines(Path.Combine(target, NewFarm.Programme)).Select((text, i) => (Text: text.TrimStart(), Line: i + 1)).ToList();
        if (isFromFiles)
        {
            var waiting = lines.Count(line => line.Text.StartsWith("# ? ", StringComparison.Ordinal));
            doors.Out.WriteLine($"{shown} is ready: your files lie in {shown}/{Records}, and {file} reads {(unread.Count == 0 ? "them" : "those that can be read")}.");
            foreach (var (one, why) in unread)
            {
                doors.Err.WriteLine($"  Not read: {PlainText.Clean(one)}: {why}");
            }

            doors.Out.WriteLine($"  {Numbers.Count(waiting, "line", "lines")} behind `# ?` in {file} {(waiting == 1 ? "waits" : "wait")} for you to choose; until then the lists ask about what they would say");
            doors.Out.WriteLine($"Then: byrelaw records {(shown.Contains(' ', StringComparison.Ordinal) ? $"\"{shown}/{Records}\"" : $"{shown}/{Records}")}");
            doors.Out.WriteLine($"and:  byrelaw draft {quoted}");
            return;
        }

        var open = lines.Where(line => line.Text.Contains(NewFarm.FillIn, StringComparison.Ordinal) && !line.Text.StartsWith('#')).Select(line => $"{line.Line}").ToList();
        doors.Out.WriteLine($"{shown} is ready to fill in:");
        doors.Out.WriteLine($"  {file}: a date for every {NewFarm.FillIn} (lines {Phrases.And(open)})");
        doors.Out.WriteLine($"  {shown}/{Records}/animals.csv: one line an animal");
        doors.Out.WriteLine($"  {shown}/{Records}/events.csv: one line for each thing that happened, was measured or was tested");
        doors.Out.WriteLine($"Then: byrelaw check {quoted}");
    }
}
