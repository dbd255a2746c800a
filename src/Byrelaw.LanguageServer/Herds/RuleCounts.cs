using Byrelaw.Judging;
using Byrelaw.Judging.Truths;
using Byrelaw.Records.Herds;
using Byrelaw.Records.Reading;
using NodaTime;

namespace Byrelaw.LanguageServer.Herds;

/// <summary>Counts animals for hovers. The last programme's answers are kept while neither its files nor its records change.</summary>
internal sealed class RuleCounts(TimeProvider clock)
{
    private const int InTheHerd = 0;
    private const int OfTheRightSort = 1;
    private const int FirstRule = 2;

    private readonly Lock _lock = new();
    private (Rulebook Rulebook, string Stamp, LocalDate Today, List<RuleCount?[]> Counts)? _kept;

    /// <summary>How many animals each list's rule of this name lets in today; nothing for a rule that is judged on the day itself.</summary>
    /// <param name="reading">A programme that names records.</param>
    /// <param name="rule">The rule's name.</param>
    /// <exception cref="RecordsNotFoundException">The records are not there.</exception>
    public IReadOnlyList<RuleCount> Of(RootReading reading, string rule)
    {
        var rulebook = reading.View.Reading.Rulebook;
        var folder = Path.GetFullPath(rulebook.Records!.Folder.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(reading.Path)!);
        var stamp = Stamp(folder, HerdReader.AnimalsFile) + Stamp(folder, HerdReader.EventsFile);
        var today = LocalDate.FromDateTime(clock.GetLocalNow().DateTime);
        lock (_lock)
        {
            if (_kept is not var (known, at, on, counts) || known != rulebook || at != stamp || on != today)
            {
                var herd = HerdReader.Read(folder, "", rulebook.Vocabulary, rulebook.Records);
                counts = [.. rulebook.Programme!.Choices.Select(choice => Count(rulebook, herd, choice, today))];
                _kept = (rulebook, stamp, today, counts);
            }

            return [.. rulebook.Programme!.Choices.Zip(counts).Select(list => Judged(rulebook, list.First).FindIndex(other => other.Name == rule) is >= 0 and var index ? list.Second[index] : null).OfType<RuleCount>()];
        }
    }

    private static RuleCount?[] Count(Rulebook rulebook, Herd herd, Choice choice, LocalDate today)
    {
        var truths = new Judge(rulebook, herd).TruthsOn(choice, today);
        var animals = Taken(rulebook.Programme!, herd, choice, truths);
        return [.. Judged(rulebook, choice).Select((_, rule) =>
        {
            var answers = animals.ConvertAll(animal => truths[rule + FirstRule][animal]);
            return new RuleCount(
                rulebook.Programme!.Name, choice.List, today, herd.KnownDay, answers.Count(answer => answer == Truth.True),
                answers.Count(answer => answer == Truth.False), answers.Count(answer => answer == Truth.Unknown));
        })];
    }

    /// <summary>The rules of a list in the order in which the judge tells their truths.</summary>
    private static List<Rule> Judged(Rulebook rulebook, Choice choice) =>
        [.. rulebook.Rules.Where(rule => rule.List == choice.List && (!rule.OnTheDay || rule.IsBroken))];

    /// <summary>The animals that a list takes today: those named, or all that are not surely out of the herd or of another sort.</summary>
    private static List<int> Taken(Programme programme, Herd herd, Choice choice, Truth[][] truths)
    {
        while (choice.From == ChoiceFrom.AnotherList)
        {
            choice = programme.Choices.First(other => other.List == choice.OtherList);
        }

        return choice.From == ChoiceFrom.Named
            ? [.. choice.Animals.Select(herd.Find).Where(animal => animal >= 0)]
            : [.. Enumerable.Range(0, herd.Count).Where(animal => truths[InTheHerd][animal] != Truth.False && truths[OfTheRightSort][animal] != Truth.False)];
    }

    private static string Stamp(string folder, string name)
    {
        var file = new FileInfo(Path.Combine(folder, name));
        return file.Exists ? $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks}\n" : "";
    }
}
