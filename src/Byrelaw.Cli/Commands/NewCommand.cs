namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw new FOLDER</c>: starts a farm's folder. Never overwrites anything.</summary>
internal static class NewCommand
{
    public static Command Make(Doors doors)
    {
        var folder = new Argument<string>("FOLDER") { Description = "A new or empty folder." };
        var command = new Command("new", "Start a farm's folder: a programme to fill in, the records' headings, the base rules by reference.") { folder };
        command.SetAction(parsed => Run(parsed.GetValue(folder)!, doors));
        return command;
    }

    private static int Run(string folder, Doors doors)
    {
        if (string.IsNullOrWhiteSpace(folder))
        {
            throw new CannotDoException("new wants the name of a folder");
        }

        var target = Path.TrimEndingDirectorySeparator(doors.Full(folder));
        LeftOvers.ClearBeside(target);
        Refuse(target, folder);
        var rulesets = RulesetsFolder.Find(target);
        var way = rulesets is null ? $"../{RulesetsFolder.Name}" : Path.GetRelativePath(target, rulesets).Replace(Path.DirectorySeparatorChar, '/');
        var name = PlainText.Clean(Path.GetFileName(target));
        var files = NewFarm.Files(name.Length == 0 ? "Our programme" : name, way, NewFarm.FactsOf(rulesets, doors));
        WholeFolder.Write(target, (there, fresh) =>
        {
            // Somebody may have put files there while this run waited for its turn.
            Refuse(there, folder);
            foreach (var (path, text) in files)
            {
                WholeFolder.Put(fresh, path, Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\n")));
            }
        });
        Say(target, rulesets is not null, doors);
        return ExitCode.Done;
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

    private static void Say(string target, bool foundRules, Doors doors)
    {
        var shown = doors.Show(target);
        var lines = File.ReadLines(Path.Combine(target, NewFarm.Programme)).Select((text, i) => (text, Line: i + 1))
            .Where(line => line.text.Contains(NewFarm.FillIn, StringComparison.Ordinal) && !line.text.TrimStart().StartsWith('#')).Select(line => $"{line.Line}").ToList();
        doors.Out.WriteLine($"{shown} is ready to fill in:");
        doors.Out.WriteLine($"  {shown}/{NewFarm.Programme}: a date for every {NewFarm.FillIn} (lines {Phrases.And(lines)})");
        doors.Out.WriteLine($"  {shown}/records/animals.csv: one line an animal");
        doors.Out.WriteLine($"  {shown}/records/events.csv: one line for each thing that happened, was measured or was tested");
        if (!foundRules)
        {
            doors.Out.WriteLine($"The shared base rules were not found beside the program: put the way to their folder into the use lines of {NewFarm.Programme}.");
        }

        var file = $"{shown}/{NewFarm.Programme}";
        doors.Out.WriteLine($"Then: byrelaw check {(file.Contains(' ', StringComparison.Ordinal) ? $"\"{file}\"" : file)}");
    }
}
