using Byrelaw.Workshop.Correcting;

namespace Byrelaw.Cli.Loading;

/// <summary>A programme's rules and the records it names, read.</summary>
/// <param name="Reading">The rules, and what is wrong with them.</param>
/// <param name="Herd">The records, and what is wrong with them.</param>
public sealed record LoadedProgramme(RulebookReading Reading, Herd Herd)
{
    /// <summary>Whether something in the files must not be trusted.</summary>
    public bool HasErrors => Reading.HasErrors || Herd.Problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>Reads both, and prints every problem.</summary>
    /// <returns>Null where the rule files leave no programme to judge; then the problems say why.</returns>
    /// <exception cref="CannotDoException">No such file, or it is not a programme's.</exception>
    public static LoadedProgramme? Read(string path, LocalDate? knownOn, Doors doors, Problems problems)
    {
        var reading = ReadRules(path, knownOn, doors);
        problems.Add(reading.Problems);
        if (reading.Rulebook is not { Programme: not null, Records: { } keeping })
        {
            var missing = reading.Rulebook.Programme is null ? "programme" : "records";
            return reading.HasErrors ? null
                : throw new CannotDoException($"{path} has no \"{missing}\" line; this command needs a programme's file, not a rule file on its own");
        }

        var folder = Path.GetFullPath(keeping.Folder.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(doors.Full(path))!);
        var herd = HerdReader.Read(folder, doors.Show(folder), reading.Rulebook.Vocabulary, keeping, knownOn);
        problems.Add(herd.Problems);
        return new LoadedProgramme(reading, herd);
    }

    /// <summary>Reads rule files alone.</summary>
    /// <exception cref="CannotDoException">No such file, or a folder.</exception>
    public static RulebookReading ReadRules(string path, LocalDate? knownOn, Doors doors)
    {
        var full = doors.Full(path);
        return Directory.Exists(full)
            ? throw new CannotDoException($"{path} is a folder; give a rule file, such as {path.TrimEnd('/')}/spring.byre")
            : RulebookReader.Read(full, new RuleFilesOnDisk(doors), knownOn)?.Corrected() ?? throw new CannotDoException($"no such file: {path}");
    }
}
