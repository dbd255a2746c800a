using System.Text.RegularExpressions;
using Byrelaw.Judging.Promises;
using Byrelaw.Language.Diagnostics;

namespace Byrelaw.Judging.Tests.UnsafeReadings;

/// <summary>The standard farm as one case changes it, and what the program says of it.</summary>
internal sealed partial class CaseFarm(IReadOnlyDictionary<string, string> standard, UnsafeCase asked) : IRuleFiles
{
    private const string Mark = "  # not on trial";
    private const string RecordsHead = "records \"records\"\n";
    // Errors in lines that then do not count, so that the rest can be asked: `up to` beyond today, a declared kind left out, and what nobody may drop.
    private static readonly string[] OfOneLine = ["B0831", "B0810", "B0726"];
    private string _rules = "";

    /// <summary>What the program says to each question, in order.</summary>
    public ImmutableArray<string> Answers()
    {
        _rules = Rules();
        var reading = RulebookReader.Read("farm.byre", this, today: new(2026, 10, 4))!;
        var error = reading.Problems.FirstOrDefault(problem => problem.Severity == Severity.Error && !OfOneLine.Contains(problem.Code));
        if (error is not null)
        {
            return [.. asked.Answers.Select(_ => $"cannot be asked ({error.Code})")];
        }

        var herd = Believed.Of(reading.Rulebook, HerdReader.Read(Bytes(Animals()), Bytes(Events()), reading.Rulebook.Vocabulary, reading.Rulebook.Records));
        var draft = new Judge(reading.Rulebook, herd).JudgeAll();
        return [.. asked.Answers.Select((answer, i) => Answer(answer.Question, i, draft, reading.Rulebook))];
    }

    public string Resolve(string from, string relative) => from == "farm.byre" ? relative : Path.GetDirectoryName(from) + "/" + relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => path == "farm.byre" ? Bytes(_rules) : File.ReadAllBytes(Repository.At(path));

    private static string Answer(string question, int i, Draft draft, Rulebook rulebook)
    {
        if (question == "promises set aside")
        {
            return SetAside(draft.Herd, rulebook);
        }

        if (Condition().IsMatch(question))
        {
            var rule = draft.Lists.Single(list => list.Choice.List == List(i)).Animals[0].Rules.Single(one => one.Name == $"Q{i}");
            var said = rule.Answer switch { RuleAnswer.Met => "met", RuleAnswer.NotMet => "not met", RuleAnswer.NotKnown => "not known", var other => other.ToString() };
            return said + (rule.Expected ? ", expected" : "");
        }

        var animal = draft.Lists.Single(list => list.Choice.List == "treatment").Animals.FirstOrDefault(animal => animal.Number == question.Split(' ')[1]);
        return animal is null ? "not on the list" : animal.Answer == Verdicts.Answer.OnCourse ? "On course" : animal.Answer.ToString();
    }

    /// <summary>Kinds whose promise counts for nobody, and those that do not count for one animal.</summary>
    private static string SetAside(Herd herd, Rulebook rulebook)
    {
        var promised = rulebook.Records!.Complete.SelectMany(complete => complete.Kinds).Distinct().OrderBy(kind => kind.Id).ToList();
        var forAll = promised.Where(kind => herd.Coverage.Since[kind.Id] == Day.End).Select(kind => kind.Name).ToList();
        var forHer = herd.Coverage.Holes.Where(hole => hole.Animal >= 0).GroupBy(hole => hole.Animal)
            .Select(holes => $"{string.Join(", ", holes.Select(hole => herd.Vocabulary.ById[hole.Kind].Declaration.Name).Distinct())} for {herd.Numbers[holes.Key]}");
        var said = string.Join("; ", new[] { string.Join(", ", forAll) }.Concat(forHer).Where(part => part.Length > 0));
        return said.Length == 0 ? "none" : said;
    }

    /// <summary>Words above <c>records</c>; promises in place of the lines down to the mark; what is asked behind the standard list.</summary>
    private string Rules()
    {
        var text = standard["byre"];
        var head = text.IndexOf(RecordsHead, StringComparison.Ordinal);
        var (from, to) = (head + RecordsHead.Length, text.IndexOf(Mark, StringComparison.Ordinal));
        var (rules, choices) = (new StringBuilder(), new StringBuilder());
        for (var i = 0; i < asked.Answers.Length; i++)
        {
            if (Condition().Match(asked.Answers[i].Question) is { Success: true } match)
            {
                var day = match.Groups["day"] is { Success: true } on ? on.Value : "2026-10-04";
                rules.Append(CultureInfo.InvariantCulture, $"rules for {List(i)}\nrule \"Q{i}\"\n  needs {match.Groups["condition"].Value}\n  because \"x\"\n  source \"x\"\n\n");
                choices.Append(CultureInfo.InvariantCulture, $"  choose {List(i)} from \"{match.Groups["animal"].Value}\", judged on {day}, for looking only\n");
            }
        }

        return text[..head] + asked.Blocks.GetValueOrDefault("words", "") + "\n" + rules + text[head..from]
            + asked.Blocks.GetValueOrDefault("records", text[from..to]) + text[to..] + choices;
    }

    private string Animals()
    {
        var table = new CaseTable(standard["animals"]);
        table.Add(asked.Blocks.GetValueOrDefault("animals"));
        table.Set(asked.Blocks.GetValueOrDefault("facts"));
        return table + asked.Blocks.GetValueOrDefault("animals cut", "").TrimEnd('\n');
    }

    private string Events()
    {
        if (asked.Blocks.TryGetValue("events whole, cut", out var cut))
        {
            return cut.TrimEnd('\n');
        }

        if (asked.Blocks.TryGetValue("events whole", out var whole))
        {
            return whole;
        }

        var table = new CaseTable(standard["events"]);
        table.Remove(asked.Blocks.GetValueOrDefault("without"));
        table.Add(asked.Blocks.GetValueOrDefault("events"));
        return table + asked.Blocks.GetValueOrDefault("events as they stand", "") + asked.Blocks.GetValueOrDefault("events cut", "").TrimEnd('\n');
    }

    // A list's name holds letters only.
    private static string List(int i) => "asked" + (char)('a' + i);

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    [GeneratedRegex(@"^(?<animal>\S+)(?: on (?<day>\d{4}-\d\d-\d\d))?: (?<condition>.+)$")]
    private static partial Regex Condition();
}
