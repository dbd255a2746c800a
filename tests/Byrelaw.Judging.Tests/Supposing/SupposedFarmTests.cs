using Byrelaw.Judging.Supposing;
using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Records.Reading;

namespace Byrelaw.Judging.Tests.Supposing;

/// <summary>What is supposed is judged as if the files said so: answer for answer, explanation for explanation.</summary>
public sealed class SupposedFarmTests
{
    [Fact]
    public void Supposed_rows_are_judged_as_if_they_stood_at_the_end_of_the_file() => Each.Hold(
        JudgingCase.Any.Where(one => one.KnownOn is null && one.Rulebook.Records!.UpTo is not null && one.Farm.Events.Length > 1)
            .SelectMany(one => Gen.Int[1, Math.Min(3, one.Farm.Events.Length - 1)].Select(last => (One: one, Last: last))),
        Cases.Count / 2,
        pair => Differs(pair.One, pair.Last),
        pair => $"the last {pair.Last} rows supposed of\n{pair.One}");

    [Fact]
    public void A_file_without_some_of_its_lines_is_judged_as_if_they_were_not_there() => Each.Hold(
        JudgingCase.Any.Where(one => one.KnownOn is null && one.Rulebook.Records!.UpTo is not null && one.Farm.Events.Length > 1)
            .SelectMany(one => Gen.Int[1, one.Farm.Events.Length].Select(lines => (One: one, Lines: lines))),
        Cases.Count / 2,
        pair =>
        {
            // Lines keep their numbers, so those that go must be the last.
            var from = PlainFarm.LineOf(pair.Lines);
            var less = pair.One with { Farm = pair.One.Farm with { Events = [.. pair.One.Farm.Events.Take(pair.Lines)] } };
            var without = new Supposition { Records = new Supposed { WithoutLines = Enumerable.Range(from, pair.One.Farm.Events.Length).ToHashSet() } };
            return Compare(Told(Anew(less), less), Told(Farm(pair.One).Judge(without), less));
        },
        pair => $"only {pair.Lines} rows of\n{pair.One}");

    [Fact]
    public void Of_days_to_come_nothing_is_sure()
    {
        var rulebook = RulebookReader.Read("farm.byre", new OneFile())!.Rulebook;
        var farm = new SupposedFarm(rulebook, ("animals.csv", "animal,born,sex\n7,2022-01-01,F\n"u8.ToArray()), ("events.csv", "date,animal,kind,value\n2026-09-29,7,heat,\n"u8.ToArray()));
        Answer AnswerWith(params SupposedRow[] rows) => farm.Judge(new Supposition { Records = new Supposed { Rows = [.. rows] } }).Answers(rulebook.Programme!.Choices[0]).Answers[0];
        AnswerWith().ShouldBe(Answer.Ask);
        AnswerWith(new SupposedRow(new(2026, 9, 30), "7", "body condition", "5")).ShouldBe(Answer.Ready);
        AnswerWith(new SupposedRow(new(2026, 10, 12), "7", "body condition", "5")).ShouldBe(Answer.OnCourse);
        AnswerWith(new SupposedRow(new(2026, 10, 12), "7", "body condition", "3")).ShouldNotBe(Answer.OnCourse);
    }

    [Fact]
    public void Without_a_doubt_the_promise_stands_and_with_a_promise_it_is_made()
    {
        var heat = RulebookReader.Read("farm.byre", new OneFile())!.Rulebook;
        var farm = new SupposedFarm(heat, ("animals.csv", "animal,born,sex\n7,2022-01-01,F\n"u8.ToArray()), ("events.csv", "date,animal,kind\n"u8.ToArray()));
        var kind = heat.Vocabulary.FindKind("heat")!;
        var promise = new Supposition { Promises = [new Completeness([kind], new(2024, 1, 1), Words.Nowhere)] };
        farm.Herd(new Supposition()).Coverage.Since[kind.Id].ShouldBe(Day.End);
        farm.Herd(promise).Doubted.Single().ShouldBeOfType<EmptyBook>();
        farm.Herd(promise).Coverage.Since[kind.Id].ShouldBe(Day.End, "a book without a row bears out no promise");
        farm.Herd(promise with { Unless = doubt => doubt is EmptyBook }).Coverage.Since[kind.Id].ShouldBe(Day.Number(new(2024, 1, 1)));
    }

    [Fact]
    public void The_answers_of_a_session_are_those_of_its_days() => Each.Hold(
        JudgingCase.Any.SelectMany(one => Gen.Int[-30, 60].SelectMany(from => Gen.Int[0, 5].Select(more => (One: one, From: from, More: more)))),
        Cases.Count / 4,
        one =>
        {
            var judge = Anew(one.One);
            foreach (var choice in one.One.Rulebook.Programme!.Choices)
            {
                var (from, to) = (choice.JudgedFrom.PlusDays(one.From), choice.JudgedFrom.PlusDays(one.From + one.More));
                var (animals, answers) = judge.Answers(choice, from, to);
                var checks = judge.ChecksOf(choice);
                var list = judge.JudgeList(choice, from, to).Animals.ToDictionary(animal => animal.Number, animal => animal.Answer);
                for (var i = 0; i < animals.Length; i++)
                {
                    var days = Enumerable.Range(0, one.More + 1).Select(day => judge.JudgeOne(choice, animals[i], from.PlusDays(day)).Answer).ToList();
                    if (checks.Of(animals[i], from, to) == Truth.True != answers[i].MayBeUsed())
                    {
                        return $"{choice.List} from {from} to {to}: {answers[i]}, by its checks {checks.Of(animals[i], from, to)}";
                    }

                    if (answers[i] != list[judge.JudgeOne(choice, animals[i]).Number] || answers[i].MayBeUsed() != days.TrueForAll(answer => answer.MayBeUsed()))
                    {
                        return $"{choice.List} from {from} to {to}: {answers[i]}, day by day {string.Join(' ', days)}";
                    }
                }
            }

            return null;
        },
        one => $"from {one.From} for {one.More + 1} days\n{one.One}");

    [Fact]
    public void Results_laid_over_a_herd_are_judged_as_those_that_are_read() => Each.Hold(
        JudgingCase.Any.Where(one => one.KnownOn is null && one.Farm.Animals.Length > 0 && ResultKinds(one).Count > 0)
            .SelectMany(one => Gen.Select(Gen.Int[0, 20], Gen.Int[0, one.Farm.Animals.Length - 1], Gen.Int[-40, 40], Gen.Int[0, 3]).Array[1, 4].Select(rows => (One: one, Rows: rows))),
        Cases.Count / 4,
        pair =>
        {
            var rulebook = pair.One.Rulebook;
            var (kinds, first) = (ResultKinds(pair.One), rulebook.Programme!.Choices[0].JudgedFrom);
            ImmutableArray<SupposedRow> rows = [.. pair.Rows.Select(row => Row(kinds[row.Item1 % kinds.Count], pair.One.Farm.Animals[row.Item2].Number, first.PlusDays(row.Item3), row.Item4))];
            var herd = HerdReader.Read(FarmCsv.Animals(pair.One.Farm), FarmCsv.Events(pair.One.Farm), rulebook.Vocabulary, rulebook.Records);
            return ResultsLaidOver.Over(herd, rows) is not { } laidOver ? null
                : Compare(Truths(rulebook, herd.ReadAgain!(new Supposed { Rows = rows }).With(herd.Doubted)), Truths(rulebook, laidOver));
        },
        pair => $"{string.Join(' ', pair.Rows)}\n{pair.One}");

    private static List<Kind> ResultKinds(JudgingCase one) => [.. one.Rulebook.Vocabulary.Kinds.Where(kind => kind is MeasureKind or TestKind)];

    private static SupposedRow Row(Kind kind, string animal, LocalDate date, int value) => kind is TestKind test
        ? new(date, animal, kind.Name, test.Answers[value % test.Answers.Length])
        : new(date, animal, kind.Name, $"{2 * (value + 1)}", ((MeasureKind)kind).Unit?.Symbol ?? "");

    /// <summary>What each rule says of each animal, around the days judged: an answer would hide most of it.</summary>
    private static List<string> Truths(Rulebook rulebook, Herd herd)
    {
        var judge = new Judge(rulebook, herd);
        return
        [
            .. from choice in rulebook.Programme!.Choices
               from days in new[] { -20, 0, 20 }
               from rule in judge.TruthsOn(choice, choice.JudgedFrom.PlusDays(days)).Select((truths, place) => (Truths: truths, Place: place))
               select $"{choice.List} {days} {rule.Place}: {string.Join(' ', rule.Truths)}",
        ];
    }

    private static string? Differs(JudgingCase one, int last)
    {
        var known = one.Rulebook.Records!.UpTo!.Value;
        var supposed = one.Farm.Events[^last..];

        // A row that cannot be read cannot be supposed, and one of a later day says nothing in a file.
        if (supposed.Any(row => LocalDatePattern.Iso.Parse(row.Date) is not { Success: true, Value: var day } || day > known || row.Recorded.Length > 0))
        {
            return null;
        }

        var rows = supposed.Select(row => new SupposedRow(LocalDatePattern.Iso.Parse(row.Date).Value, row.Animal, row.Kind, row.Value, row.Unit));
        var before = one with { Farm = one.Farm with { Events = [.. one.Farm.Events.Take(one.Farm.Events.Length - last)] } };
        return Compare(Told(Anew(one), one), Told(Farm(before).Judge(new Supposition { Records = new Supposed { Rows = [.. rows] } }), one));
    }

    private static SupposedFarm Farm(JudgingCase one) => new(one.Rulebook, ("animals.csv", FarmCsv.Animals(one.Farm)), ("events.csv", FarmCsv.Events(one.Farm)));

    private static Judge Anew(JudgingCase one) => new(one.Rulebook,
        Byrelaw.Judging.Promises.Believed.Of(one.Rulebook, HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records)));

    private static List<string> Told(Judge judge, JudgingCase one) => [.. judge.JudgeAll(one.On).Lists.SelectMany(list => list.Animals.SelectMany(animal => Lines(list.Choice.List, animal, judge.Herd.SupposedBelow)))];

    private static IEnumerable<string> Lines(string list, AnimalJudgement animal, int supposedBelow)
    {
        yield return $"{list} {animal.Number}: {animal.Answer} {animal.ReadyFrom} {animal.ReadyUntil} {animal.NotBefore} {animal.Score}";
        foreach (var rule in animal.Rules)
        {
            yield return $"{list} {animal.Number} {rule.Name}: {rule.Answer} {rule.Expected}";
            foreach (var finding in rule.Findings)
            {
                yield return $"{list} {animal.Number} {rule.Name}: {finding.Truth} {finding.Found} {finding.Margin} "
                    + string.Join('|', finding.Evidence.Select(evidence => $"{evidence.Kind?.Name} {evidence.Fact} {evidence.Date} {evidence.Value} {LineInTheFile(evidence, supposedBelow)} {evidence.Details}").Order(StringComparer.Ordinal))
                    + " missing " + string.Join('|', finding.Missing);
            }
        }
    }

    /// <summary>A row that is supposed stands in no file, and is counted by itself (so records of one day may be told in another order): here, from the file's last line.</summary>
    private static int LineInTheFile(Evidence evidence, int supposedBelow) => evidence.File == "supposed" ? supposedBelow + evidence.Line : evidence.Line;

    /// <summary>One rule that is met by a score alone.</summary>
    private sealed class OneFile : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => Encoding.UTF8.GetBytes("""
            event heat
            measure body condition on scale 1 to 10

            rules for recipients

            rule "In condition"
              needs latest body condition in the last 30 days at least 4
              because "so"
              source "common practice"

            records "records"
              up to 2026-09-30

            programme "Spring"
              collection on 2026-10-12
              choose recipients from "7", judged on 2026-10-12, for looking only

            """);
    }

    private static string? Compare(List<string> anew, List<string> supposed)
    {
        for (var i = 0; i < Math.Max(anew.Count, supposed.Count); i++)
        {
            if (anew.ElementAtOrDefault(i) != supposed.ElementAtOrDefault(i))
            {
                return $"anew: {anew.ElementAtOrDefault(i)}\nsupposed: {supposed.ElementAtOrDefault(i)}";
            }
        }

        return null;
    }
}
