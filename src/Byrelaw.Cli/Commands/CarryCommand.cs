using Byrelaw.Workshop.Carrying;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw carry PROGRAMME --to SEASON</c>: next season's file; the old one is never touched.</summary>
internal static class CarryCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "This season's file." };
        var season = new Option<string>("--to") { Description = "The next season, such as \"spring 2027\" or 2027.", HelpName = "SEASON", Required = true };
        var first = SharedOptions.Date("--first-date", "The day that the programme's first date moves to, or about so; without it the same time of year.");
        var file = new Option<string?>("--out", "-o") { Description = "The new file; without it named after the season, beside the old one.", HelpName = "FILE" };
        var command = new Command("carry", "Write next season's file: dates moved, what was agreed marked to be agreed again, waivers left out.") { programme, season, first, file };
        command.SetAction(parsed => Run(
            parsed.GetValue(programme)!, parsed.GetValue(season)!, parsed.GetValue(first), parsed.GetValue(file), doors));
        return command;
    }

    private static int Run(string programme, string to, LocalDate? first, string? file, Doors doors)
    {
        var season = NextSeason.Read(to) ?? throw new CannotDoException($"--to wants a season that ends in its year, such as \"spring 2027\", not `{to}`");
        var reading = LoadedProgramme.ReadRules(programme, knownOn: null, doors.Folder, doors.Today);
        var problems = new Problems();
        problems.Add(reading.Problems);
        if (reading.HasErrors)
        {
            problems.Print(doors);
            doors.Err.WriteLine($"{problems.Counted()}. What is carried on must be whole: mend it first.");
            return ExitCode.Bad;
        }

        var full = doors.Full(programme);
        var carried = FileCarrier.Carry(doors.Show(full), File.ReadAllBytes(full), season, first) ?? throw new CannotDoException(
            reading.Rulebook.Programme is null ? $"{programme} has no programme to carry on"
            : $"{to} does not come after the season of {programme}; say with --first-date where its first date moves to");
        var target = doors.Full(file ?? Path.Combine(Path.GetDirectoryName(programme) ?? "", FileName(programme, season)));
        NewFile.Write(target, Encoding.UTF8.GetBytes(carried.Text), doors);
        doors.Out.Write(CarryText.Of(carried, doors.Show(full), doors.Show(target)));
        return ExitCode.Done;
    }

    /// <summary><c>spring-2027.byre</c>; for a year alone the old name with its year in it.</summary>
    private static string FileName(string programme, NextSeason season)
    {
        var old = Path.GetFileNameWithoutExtension(programme);
        var name = season.Name.Contains(' ', StringComparison.Ordinal) ? season.Name : season.Rename(old).Replace(", ", "-", StringComparison.Ordinal);
        return string.Concat(name.Trim().ToLowerInvariant().Select(letter => char.IsLetterOrDigit(letter) ? letter : '-')) + ".byre";
    }
}
