namespace Byrelaw.Loading;

/// <summary>A programme's rules and the records it names, read.</summary>
/// <param name="Reading">The rules, and what is wrong with them.</param>
/// <param name="Herd">The records, and what is wrong with them.</param>
public sealed record LoadedProgramme(RulebookReading Reading, Herd Herd)
{
    /// <summary>Whether something in the files must not be trusted.</summary>
    public bool HasErrors => Reading.HasErrors || Herd.Problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>Reads both.</summary>
    /// <param name="path">The programme's file.</param>
    /// <param name="knownOn">The day whose knowledge is asked for; null for today's.</param>
    /// <param name="work">Where relative paths start.</param>
    /// <param name="tell">Told what is wrong with the rules, then what is wrong with the records.</param>
    /// <param name="today">What day it is; null where that is of no matter.</param>
    /// <param name="herd">Which herd, where the records hold several; null for the one.</param>
    /// <param name="recordsTo">The day up to which a person says that everything is written down; null for what the farm's file says.</param>
    /// <param name="drawing">The sheets that are being drawn; null for none.</param>
    /// <returns>Null where the rule files leave no programme to judge; then the problems say why.</returns>
    /// <exception cref="CannotDoException">No such file, or it is not a programme's.</exception>
    public static LoadedProgramme? Read(
        string path, LocalDate? knownOn, WorkFolder work, Action<IEnumerable<Diagnostic>> tell, LocalDate? today = null, string? herd = null, LocalDate? recordsTo = null, SheetsDrawn? drawing = null)
    {
        if (ReadProgramme(path, knownOn, work, tell, today, recordsTo) is not { } reading)
        {
            return null;
        }

        reading = reading with { Rulebook = reading.Rulebook with { Records = reading.Rulebook.Records! with { Drawing = drawing } } };

        var folder = RecordsFolder.Of(reading.Rulebook.Records!.Folder, work.Full(path));
        var records = RecordsFolder.Read(reading.Rulebook, folder, work.Show(folder), knownOn, herd);
        tell(records.Problems);
        return new LoadedProgramme(reading, records);
    }

    /// <summary>Reads the rules of a programme that names its records; not the records.</summary>
    /// <inheritdoc cref="Read"/>
    public static RulebookReading? ReadProgramme(string path, LocalDate? knownOn, WorkFolder work, Action<IEnumerable<Diagnostic>> tell, LocalDate? today, LocalDate? recordsTo = null)
    {
        var reading = ReadRules(path, knownOn, work, today).ReachingTo(recordsTo);
        tell(reading.Problems);
        if (reading.Rulebook is { Programme: not null, Records: { } keeping })
        {
            return reading with { Rulebook = reading.Rulebook with { Records = keeping with { SheetsNamed = SheetsInLog.Beside(work.Full(path)) } } };
        }

        var missing = reading.Rulebook.Programme is null ? "programme" : "records";
        return reading.HasErrors ? null
            : throw new CannotDoException($"{path} has no \"{missing}\" line; this command needs a programme's file, not a rule file on its own");
    }

    private static bool IsOfRecords(string path) =>
        Path.GetExtension(path).ToUpperInvariant() is ".CSV" or ".TSV" or ".XLSX" or ".XLS" or ".GZ";

    /// <summary>Reads rule files alone.</summary>
    /// <exception cref="CannotDoException">No such file, or a folder.</exception>
    public static RulebookReading ReadRules(string path, LocalDate? knownOn, WorkFolder work, LocalDate? today = null)
    {
        var full = work.Full(path);
        return Directory.Exists(full)
            ? throw new CannotDoException($"{path} is a folder; give a rule file, such as {path.TrimEnd('/')}/spring.byre")
            : IsOfRecords(full) && File.Exists(full) ? throw new CannotDoException($"{path} holds records and no rules; to begin with a farm's own files: byrelaw new NAME --from FOLDER, with the folder that they lie in")
            : RulebookReader.Read(full, new RuleFilesOnDisk(work), knownOn, today)?.Corrected() ?? throw new CannotDoException($"no such file: {path}");
    }
}
