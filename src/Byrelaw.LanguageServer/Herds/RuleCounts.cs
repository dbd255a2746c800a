namespace Byrelaw.LanguageServer.Herds;

/// <summary>Counts animals for hovers. The last programme's answers are kept while neither its files nor its records change.</summary>
internal sealed class RuleCounts(TimeProvider clock)
{
    private readonly Lock _lock = new();
    private (Rulebook Rulebook, string Stamp, LocalDate Today, List<RuleCount> Counts)? _kept;

    /// <summary>How many animals each list's rule of this name lets in today; nothing for a rule that is judged on the day itself.</summary>
    /// <param name="reading">A programme that names records.</param>
    /// <param name="rule">The rule's name.</param>
    /// <exception cref="RecordsNotFoundException">The records are not there.</exception>
    public IReadOnlyList<RuleCount> Of(RootReading reading, string rule)
    {
        var rulebook = reading.View.Reading.Rulebook;
        var folder = RecordsFolder.Of(rulebook.Records!.Folder, reading.Path);
        var stamp = Stamp(folder, HerdReader.AnimalsFile) + Stamp(folder, HerdReader.EventsFile);
        var today = LocalDate.FromDateTime(clock.GetLocalNow().DateTime);
        lock (_lock)
        {
            if (_kept is not var (known, at, on, counts) || known != rulebook || at != stamp || on != today)
            {
                counts = Count(rulebook, folder, today);
                _kept = (rulebook, stamp, today, counts);
            }

            return [.. counts.Where(count => count.Tally.Rule.Name == rule)];
        }
    }

    private static List<RuleCount> Count(Rulebook rulebook, string folder, LocalDate today)
    {
        var herd = RecordsFolder.Read(rulebook, folder, "");
        var (judge, programme) = (new Judge(rulebook, herd), rulebook.Programme!);
        return [.. programme.Choices.SelectMany(choice => judge.Tally(choice, today)
            .Select(tally => new RuleCount(programme.Name, choice.List, today, herd.KnownDay, tally)))];
    }

    private static string Stamp(string folder, string name)
    {
        var file = new FileInfo(Path.Combine(folder, name));
        return file.Exists ? $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks}\n" : "";
    }
}
