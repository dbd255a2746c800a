using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Judging.Tuning;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Testing.Conditions;
using Byrelaw.Workshop.Tuning;

namespace Byrelaw.Judging.Tests.Conditions;

/// <summary>Every kind of condition can be judged, by both, explained and tuned: a table that lacks one fails here.</summary>
public sealed class EveryKindTests : IRuleFiles
{
    private readonly PlainFarm _farm = new(
        ["breeding index", "mature weight", "breed", "dam tested", "official identity"],
        [new AnimalRow("1", "2020-05-01", "F", "Home", "2", ["100", "500", "Jersey", "2026-02-01", "tag 1"])],
        [new EventRow("2026-08-31", "1", "calving", "", ""), new EventRow("2026-09-10", "1", "heat", "", ""), new EventRow("2026-09-11", "1", "weight", "400", "kg"),
            new EventRow("2026-09-12", "1", "virus", "negative", "")]);

    private Rulebook Book => RulebookReader.Read("every.byre", this)!.Rulebook;

    [Fact]
    public void Both_judge_every_kind_and_every_kind_has_a_finding()
    {
        var book = Book;
        var herd = Herd(book);
        var judged = new Judge(book, herd).JudgeOne(book.Programme!.Choices[0], 0).Rules.Single(rule => rule.Name == "All of it");
        new ReferenceJudge(book, _farm).Judge(book.Programme.Choices[0], animal: 0).Rules.Count.ShouldBe(4);
        var leaves = book.Rules[0].Needs.Leaves(book);
        judged.Findings.Select(finding => finding.Condition).ShouldBe(leaves, ignoreOrder: true);
    }

    [Fact]
    public void Every_number_of_every_kind_can_be_tuned()
    {
        var book = Book;
        var tuner = new NumberTuner(book, Herd(book));
        var numbers = book.Rules.SelectMany(rule => NumbersOfRule.Of(book, rule)).ToList();
        numbers.Count.ShouldBeGreaterThan(25);
        foreach (var number in numbers)
        {
            tuner.Tune(number, book.Programme!.Choices[0]).Steps.ShouldNotBeEmpty();
        }
    }

    [Fact]
    public void Random_rules_are_of_every_kind()
    {
        var kinds = typeof(Condition).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Condition)) && type is { IsAbstract: false, IsPublic: true }).ToHashSet();
        for (uint number = 0; number < 400 && kinds.Count > 0; number++)
        {
            var one = JudgingCase.Any.Generate(new PCG(number, 1), null, out _);
            var written = one.Rulebook.Rules.Select(rule => rule.Needs).Concat(one.Rulebook.Defines.Select(define => define.Condition)).ToList();
            kinds.ExceptWith(written.Concat(written.SelectMany(condition => condition.Written())).Select(condition => condition.GetType()));
        }

        kinds.ShouldBeEmpty();
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => Encoding.UTF8.GetBytes(EveryKind.Text);

    private Herd Herd(Rulebook book) => HerdReader.Read(FarmCsv.Animals(_farm), FarmCsv.Events(_farm), book.Vocabulary, book.Records);
}
