using Byrelaw.Checking.Coverage;
using Byrelaw.Checking.Examples;
using Byrelaw.Checking.Trouble;

namespace Byrelaw.Cli.Commands;

/// <summary>Rule files that were read and tried.</summary>
/// <param name="doors">Where they are.</param>
/// <param name="keptHash">A hash that must be on a line of the log of judging beside a programme; null for none.</param>
public sealed class CheckedFiles(Doors doors, string? keptHash = null)
{
    private readonly List<Rulebook> _rulebooks = [];
    private readonly List<ExampleOutcome> _examples = [];
    private readonly HashSet<string> _logs = [];

    /// <summary>All that is wrong in them.</summary>
    public Problems Problems { get; } = new();

    /// <summary>A line about each file.</summary>
    public List<string> Said { get; } = [];

    /// <summary>Why files could not be read at all.</summary>
    public List<string> Missing { get; } = [];

    /// <summary>Whether a file could be read only in part.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>Whether by a file that has errors nobody can be judged: a rule is broken, or there is no list that a programme with errors still draws up.</summary>
    public bool NobodyCanBeJudged { get; private set; }

    /// <summary>Reads one file, looks for trouble in its rules, and tries its examples and those of the files it uses.</summary>
    public void Check(string file)
    {
        try
        {
            var reading = LoadedProgramme.ReadRules(file, knownOn: null, doors.Folder, doors.Today);
            Problems.Add(reading.Problems);
            Problems.Add(TroubleFinder.Find(reading.Rulebook));
            HasErrors |= reading.HasErrors;
            NobodyCanBeJudged |= reading.HasErrors && LeavesNothingToJudge(reading.Rulebook);
            var outcomes = ExampleRunner.Run(reading, new RuleFilesOnDisk(doors.Folder));
            foreach (var outcome in outcomes)
            {
                Add(outcome);
            }

            _rulebooks.Add(reading.Rulebook);
            _examples.AddRange(outcomes);
            Problems.Add(reading.HasErrors ? [] : UnknownAnimals.Waived(reading.Rulebook, file, doors.Folder));
            var log = reading.Rulebook.Programme is null || !_logs.Add(Path.GetDirectoryName(doors.Full(file))!) ? null : LogOfJudging.Check(file, keptHash, doors);
            Problems.Add(log?.Problems ?? []);
            Said.Add($"{PlainText.Clean(file)}: {Contents(reading.Rulebook)}, {(reading.HasErrors ? "with errors" : "no errors")}{Tried(outcomes)}");
            Said.AddRange(log is null ? [] : [LogOfJudging.Summed(log, file, doors)]);
        }
        catch (Exception exception) when (exception is CannotDoException or IOException or UnauthorizedAccessException)
        {
            Missing.Add(exception.Message);
        }
    }

    /// <summary>What the examples of all files show of each rule, each rule once.</summary>
    public ImmutableArray<RuleCoverage> Coverage() =>
        [.. _rulebooks.SelectMany(rulebook => RuleCoverage.Of(rulebook, _examples)).DistinctBy(rule => (rule.Span.File.Path, rule.Span.Start))];

    private void Add(ExampleOutcome outcome)
    {
        Problems.Add(outcome.Problems);
        foreach (var expectation in outcome.Expectations)
        {
            if (expectation.Failure is { } failure)
            {
                Problems.Add(failure, ExampleText.Of(expectation, doors.ErrInk));
            }
        }
    }

    private static bool LeavesNothingToJudge(Rulebook rulebook) =>
        Wholeness.IsBroken(rulebook) || rulebook.Programme is { Choices.IsEmpty: true } || rulebook.Programme is null != rulebook.Records is null;

    private static string Contents(Rulebook rulebook)
    {
        var lists = rulebook.Rules.GroupBy(rule => rule.List).Select(list => $"{Numbers.Count(list.Count(), "rule", "rules")} for {PlainText.Clean(list.Key)}").ToList();
        return lists.Count == 0 ? "no rules" : Phrases.And(lists);
    }

    private static string Tried(ImmutableArray<ExampleOutcome> outcomes)
    {
        var failed = outcomes.Count(outcome => !outcome.Holds);
        return outcomes.IsEmpty ? "" : $", {Numbers.Count(outcomes.Length, "example", "examples")}, {(failed == 0 ? "all as expected" : $"{failed} not as expected")}";
    }
}
