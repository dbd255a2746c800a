using Byrelaw.Language.Canonical;

namespace Byrelaw.Judging.Tests.Tuning;

/// <summary>The lines a farm is told to write read back to what was tuned, for every number of every rule of two farms.</summary>
public sealed class LinesToWriteTests : IRuleFiles
{
    // Judging a farm twice takes the time of reading a hundred rulebooks: what the rules ask for is held for every number, the answers for one in so many.
    private const int JudgedOf = 8;
    private string _root = "";
    private string _text = "";

    [Theory]
    [InlineData("examples/withy-bend", "spring-2026.byre", 30)]
    [InlineData("examples/two-farms/alder-brook", "spring-2026.byre", 5)]
    public void What_is_to_be_written_answers_what_was_told(string folder, string file, int atLeast)
    {
        (_root, var own) = (Repository.At($"{folder}/{file}"), File.ReadAllText(Repository.At($"{folder}/{file}")));
        var rulebook = With(own).Rulebook;
        var tried = 0;
        foreach (var number in rulebook.Rules.SelectMany(rule => NumbersOfRule.Of(rulebook, rule)).DistinctBy(number => number.Key))
        {
            var value = Another(number.Number);
            var lines = LinesToWrite.For(rulebook, number, value);
            var reading = With(Written(own, lines));

            reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty($"{number.Rule.Name}\n{string.Join('\n', lines.Lines)}");
            var tuned = rulebook.With(number, value);

            // A number of a define becomes a define of the farm's own, by another name: then only the answers are the same.
            var isOwnDefine = lines.Lines.Any(line => line.StartsWith("define ", StringComparison.Ordinal));
            if (!isOwnDefine)
            {
                Asked(reading.Rulebook).ShouldBe(Asked(tuned), $"{number.Rule.Name}\n{string.Join('\n', lines.Lines)}");
            }

            if (tried++ % JudgedOf == 0 || isOwnDefine)
            {
                Said(reading.Rulebook, folder).ShouldBe(Said(tuned, folder), $"{number.Rule.Name}\n{string.Join('\n', lines.Lines)}");
            }
        }

        tried.ShouldBeGreaterThanOrEqualTo(atLeast);
    }

    [Fact]
    public void With_its_blanks_still_open_a_file_cannot_be_read()
    {
        (_root, var own) = (Repository.At("examples/withy-bend/spring-2026.byre"), File.ReadAllText(Repository.At("examples/withy-bend/spring-2026.byre")));
        var rulebook = With(own).Rulebook;
        var number = NumbersOfRule.Of(rulebook, rulebook.Rules.First(rule => rule.Name == "Eight weeks calved"))[0];

        With(own + "\n" + string.Join('\n', LinesToWrite.For(rulebook, number, 52).Lines) + "\n").HasErrors.ShouldBeTrue();
    }

    /// <summary>Where a safety rule stands in the farm's own file, and speaks of a name that other rules speak of too.</summary>
    [Theory]
    [InlineData("Seen empty", 20)]
    [InlineData("Seen empty", 50)]
    [InlineData("Not served lately", 20)]
    [InlineData("Not served lately", 50)]
    public void No_line_that_is_pasted_loosens_a_safety_rule_of_the_same_file(string rule, int value)
    {
        const string Own = """
            use base vocabulary edition 1
            define cleared
              any of
                - no mating since last calving
                - latest pregnancy test from 35 days after last mating is empty
            rules for recipients
            safety rule "Empty"
              needs cleared
              because "A pipette ends a pregnancy."
              source "example"
            safety rule "Not served lately"
              needs no mating in the last 42 days
              because "No test can tell."
              source "example"
            rule "Seen empty"
              needs cleared
              because "The vet wants it so."
              source "example"

            """;
        _root = "/farm.byre";
        var before = With(Own).Rulebook;
        var number = NumbersOfRule.Of(before, before.Rules.Single(one => one.Name == rule))[0];
        var pasted = With(Written(Own, LinesToWrite.For(before, number, value)));

        // What was asked is asked still, or an error says so and breaks the list.
        pasted.Rulebook.Defines.Single(define => define.Name == "cleared").Condition.Items.Select(CanonicalText.Of).ShouldContain("latest pregnancy test from 35 days after last mating is empty");
        foreach (var safety in before.Rules.Where(one => one.IsSafety))
        {
            var now = pasted.Rulebook.Rules.Single(one => one.Name == safety.Name);
            (now.IsBroken || now.Needs.Written().Select(CanonicalText.Of).Contains(CanonicalText.Of(safety.Needs))).ShouldBeTrue(CanonicalText.Of(now.Needs));
        }
    }

    public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

    public string Show(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    public byte[]? Read(string path) => path == _root ? Encoding.UTF8.GetBytes(_text) : File.Exists(path) ? File.ReadAllBytes(path) : null;

    private RulebookReading With(string text)
    {
        _text = text;
        return RulebookReader.Read(_root, this)!;
    }

    /// <summary>A value beside the one in force.</summary>
    private static decimal Another(ConditionNumber number)
    {
        var (value, one) = ((decimal)number.Value, number.IsWhole ? 1m : 0.5m);
        return number.Highest is { } highest && value + one > (decimal)highest ? value - one : value + one;
    }

    /// <summary>As a person would do it: new lines at the end, or in the place of what the block asks for now; the blanks filled in.</summary>
    private static string Written(string own, LinesToWrite lines)
    {
        var filled = string.Join('\n', lines.Lines)
            .Replace(LinesToWrite.Why, "\"It was agreed so.\"", StringComparison.Ordinal)
            .Replace(LinesToWrite.Who, "\"herd vet\"", StringComparison.Ordinal)
            .Replace(LinesToWrite.Day, "2026-10-01", StringComparison.Ordinal);
        if (lines.In is not { } block)
        {
            return $"{own}\n{filled}\n";
        }

        var all = own.Split('\n');
        var at = Array.FindIndex(all, block.Line, line => line.TrimStart().StartsWith("needs ", StringComparison.Ordinal));
        return string.Join('\n', all.Take(at).Append("  " + filled).Concat(all.Skip(at + 1)));
    }

    /// <summary>What every rule and define asks for.</summary>
    private static string Asked(Rulebook rulebook) => string.Join('\n',
    [
        .. rulebook.Rules.Select(rule => $"{rule.Name}: {CanonicalText.Of(rule.Needs)}").Order(StringComparer.Ordinal),
        .. rulebook.Defines.Select(define => $"{define.Name}: {CanonicalText.Of(define.Condition)}").Order(StringComparer.Ordinal),
    ]);

    private static string Said(Rulebook rulebook, string folder)
    {
        var (animals, events) = Some(folder);
        var herd = HerdReader.Read(animals, events, rulebook.Vocabulary, rulebook.Records);
        var judge = new Judge(rulebook, herd);
        return string.Join('\n', rulebook.Programme!.Choices.Select(choice =>
        {
            var (who, answers) = judge.Answers(choice);
            return $"{choice.List}: {string.Join(", ", who.Zip(answers, (animal, answer) => $"{herd.Numbers[animal]} {answer}"))}";
        }));
    }

    /// <summary>Every fifth animal and what is on record of these, of mobs and of the herd: all of them show no more, and take five times as long.</summary>
    private static (byte[] Animals, byte[] Events) Some(string folder)
    {
        var animals = File.ReadAllLines(Repository.At($"{folder}/records/animals.csv")).Where((_, line) => line % 5 == 0 || folder.EndsWith("alder-brook", StringComparison.Ordinal)).ToList();
        var numbers = animals.Select(line => line.Split(',')[0]).ToHashSet();
        var events = File.ReadLines(Repository.At($"{folder}/records/events.csv")).Where((line, place) => place == 0 || (line.Split(',')[1] is var who && (numbers.Contains(who) || who == "herd" || who.StartsWith("mob:", StringComparison.Ordinal))));
        return (Encoding.UTF8.GetBytes(string.Join('\n', animals) + "\n"), Encoding.UTF8.GetBytes(string.Join('\n', events) + "\n"));
    }
}
