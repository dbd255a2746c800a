using CsCheck;

namespace Byrelaw.Judging.Tests.Explaining;

/// <summary>
/// What is named as enough to settle a rule is enough, and no less is: held to trying all answers to all questions, on lists of conditions about facts that nobody wrote down.
/// </summary>
public sealed class WaysToSettleTests
{
    private const int Facts = 6;

    private static readonly string[] Heads = ["all of", "any of", "none of", "at least 2 of"];

    private static readonly Gen<(int[] Order, int[] Shape, int[] Cells)> Cases =
        Gen.Select(Gen.Shuffle(Enumerable.Range(0, Facts).ToArray()), Gen.Int[0, 999].Array[8], Gen.Int[0, 3].Array[Facts]);

    [Fact]
    public void Each_way_is_enough_and_none_is_missing_that_takes_less() => Cases.Hold(
        one =>
        {
            var known = one.Cells.Select(cell => cell switch { 0 => Truth.True, 1 => Truth.False, _ => Truth.Unknown }).ToArray();
            var condition = Made(one.Order, one.Shape);
            var rule = Judged(condition, known);
            if (condition.Of(known) is var truth && truth != Truth.Unknown)
            {
                rule.Ways.ShouldBeEmpty();
                return;
            }

            rule.Answer.ShouldBe(RuleAnswer.NotKnown);
            var ways = rule.Ways.Select(way => way.Select(missing => missing.Subject[^1] - 'a').ToArray()).ToList();
            ways.ShouldNotBeEmpty();
            foreach (var way in ways)
            {
                Turns(condition, known, way).ShouldBeTrue($"{string.Join(' ', way)} of {condition.Text}");
            }

            if (!condition.CountsTwo)
            {
                var open = Enumerable.Range(0, Facts).Where(fact => known[fact] == Truth.Unknown).ToArray();
                var enough = Enumerable.Range(1, (1 << open.Length) - 1).Select(set => open.Where((_, bit) => (set & (1 << bit)) != 0).ToArray())
                    .Where(set => Turns(condition, known, set)).ToList();
                var fewest = enough.Where(set => !enough.Exists(less => less.Length < set.Length && less.All(set.Contains)));
                ways.Select(way => string.Join(' ', way.Order())).ShouldBe(fewest.Select(set => string.Join(' ', set)), ignoreOrder: true);
            }
        },
        count: 150);

    /// <summary>Whether some answers to these questions make it true, whatever the others are.</summary>
    private static bool Turns(Listed condition, Truth[] known, int[] asked) => Enumerable.Range(0, 1 << asked.Length).Any(answers =>
    {
        var found = (Truth[])known.Clone();
        for (var bit = 0; bit < asked.Length; bit++)
        {
            found[asked[bit]] = (answers & (1 << bit)) != 0 ? Truth.True : Truth.False;
        }

        return condition.Of(found) == Truth.True;
    });

    private static RuleJudgement Judged(Listed condition, Truth[] known)
    {
        var names = Enumerable.Range(0, Facts).Select(fact => $"mark {(char)('a' + fact)}").ToList();
        var files = new OneRuleFile(string.Concat(names.Select(name => $"fact {name} is one of yes, other\n"))
            + $"\n{string.Concat(condition.Inner.Select(list => $"define {list.Text}\n  {list.Lines("  ")}\n"))}rules for recipients\n\nrule \"R\"\n  needs {condition.Lines("  ")}  because \"so\"\n  source \"common practice\"\n\nrecords \"records\"\n  up to 2026-09-20\n\n"
            + "programme \"P\"\n  collection on 2026-10-12\n  choose recipients from \"7\", judged on 2026-09-01, for looking only\n");
        var reading = RulebookReader.Read("farm.byre", files)!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        var cells = known.Select(truth => truth switch { Truth.True => "yes", Truth.False => "other", _ => "" });
        var herd = HerdReader.Read(
            Encoding.UTF8.GetBytes($"animal,born,sex,{string.Join(',', names)}\n7,2020-05-01,F,{string.Join(',', cells)}\n"), Encoding.UTF8.GetBytes("date,animal,kind,value\n"), reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        return new Judge(reading.Rulebook, herd).JudgeOne(reading.Rulebook.Programme!.Choices[0], 0).Rules.Single(rule => rule.Name == "R");
    }

    /// <summary>A list that asks about each fact once; what is left over after an item's share goes to the next, and a share of several facts is a list of its own.</summary>
    private static Listed Made(int[] order, int[] shape)
    {
        var (next, fact) = (0, 0);
        Listed Share(int facts)
        {
            if (facts == 1)
            {
                return new Listed(order[fact++], "", []);
            }

            var kind = shape[next++ % shape.Length];
            var items = new List<Listed>();
            for (int left = facts, item = Math.Min(facts, 2 + (kind / 4 % 2)); item > 0; item--)
            {
                var share = item == 1 ? left : 1 + (shape[(next + item) % shape.Length] % (left - item + 1));
                items.Add(Share(share));
                left -= share;
            }

            return new Listed(-1, Heads[items.Count < 3 ? kind % 3 : kind % 4], items);
        }

        return Share(Facts);
    }

    /// <summary>A fact, or a list.</summary>
    private sealed record Listed(int Fact, string Head, IReadOnlyList<Listed> Items)
    {
        public bool CountsTwo => Head == Heads[3] || Items.Any(item => item.CountsTwo);

        /// <summary>What stands for it in a list: lists are one level deep, so one inside another has a name.</summary>
        public string Text => Fact >= 0 ? $"mark {(char)('a' + Fact)} is yes" : $"meant of {string.Join("", Items.Select(item => item.Fact >= 0 ? $"{(char)('a' + item.Fact)}" : item.Text.Replace(" ", "", StringComparison.Ordinal)))}";

        /// <summary>The lists inside it, the innermost first.</summary>
        public IEnumerable<Listed> Inner => Items.Where(item => item.Fact < 0).SelectMany(item => item.Inner.Append(item));

        public string Lines(string indent) => $"{Head}\n{string.Concat(Items.Select(item => $"{indent}  - {item.Text}\n"))}";

        /// <summary>In Kleene's logic.</summary>
        public Truth Of(Truth[] known)
        {
            if (Fact >= 0)
            {
                return known[Fact];
            }

            var (yes, no) = (Items.Count(item => item.Of(known) == Truth.True), Items.Count(item => item.Of(known) == Truth.False));
            var needed = Head switch { "all of" => Items.Count, "at least 2 of" => 2, _ => 1 };
            var truth = yes >= needed ? Truth.True : Items.Count - no < needed ? Truth.False : Truth.Unknown;
            return Head == "none of" ? (Truth)(Truth.True - truth) : truth;
        }
    }

    private sealed class OneRuleFile(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => Encoding.UTF8.GetBytes(text);
    }
}
