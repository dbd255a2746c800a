using Byrelaw.Judging.Verdicts;

namespace Byrelaw.Checking.Tests.MadeUp;

public sealed class MadeUpHerdTests
{
    private const string Rules =
        """
        event calving
        event heat
        measure serum copper in umol/L, molar mass 63.546
        rules for recipients
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "."
        rule "Copper of the mob"
          needs average serum copper of her mob in the last 60 days, from at least 2 animals, at least 7 umol/L
          because "."
        rule "Seen in heat"
          needs at least 1 heat since last calving
          because "."
        records "."
        programme "Made up"
          transfer on 2026-10-20
          choose recipients from females, judged on first transfer, for looking only
        """;

    private static readonly MadeUpHerd Herd = new(
        [new MadeUpAnimal("1423") { Born = "2021-08-10", Line = 42 }],
        [
            new MadeUpRow(new LocalDate(2026, 8, 24), "1423", "calving", Line: 43),
            new MadeUpRow(new LocalDate(2026, 8, 25), "1423", "mob", "Back", Line: 44),
            new MadeUpRow(new LocalDate(2026, 10, 1), "mob:Back", "serum copper", "6", "umol/L", 45),
            new MadeUpRow(new LocalDate(2026, 10, 1), "mob:Back", "serum copper", "8", "umol/L", 45),
        ],
        new LocalDate(2026, 10, 20))
    { ShownFile = "examples.byre" };

    [Fact]
    public void A_made_up_animal_is_judged_as_a_farms_own_and_its_records_name_their_lines_in_the_rule_file()
    {
        var rules = Judge(Herd);
        rules.Select(rule => rule.Answer).ShouldBe([RuleAnswer.Met, RuleAnswer.Met, RuleAnswer.NotMet]);
        rules[0].Findings[0].Evidence.Select(record => (record.File, record.Line)).ShouldBe([("examples.byre", 43)]);
        rules[1].Findings[0].Evidence.Select(record => (record.File, record.Line)).ShouldBe([("examples.byre", 45), ("examples.byre", 45)]);
    }

    [Fact]
    public void What_is_not_kept_is_not_known_where_nothing_is_on_record()
    {
        var herd = Herd with { NotKept = [Reading.Rulebook.Vocabulary.FindKind("heat")!] };
        Judge(herd)[2].Answer.ShouldBe(RuleAnswer.NotKnown);
    }

    private static RulebookReading Reading { get; } = RulebookReader.Read("rules.byre", new OneFile())!;

    private static List<RuleJudgement> Judge(MadeUpHerd made)
    {
        Reading.Problems.ShouldBeEmpty();
        var herd = made.Read(Reading.Rulebook.Vocabulary);
        herd.Problems.ShouldBeEmpty();
        var judgement = new Judge(Reading.Rulebook, herd).JudgeOne(Reading.Rulebook.Programme!.Choices[0], 0);
        return [.. judgement.Rules.Where(rule => rule.Gate == Gate.None)];
    }

    private sealed class OneFile : IRuleFiles
    {
        public byte[]? Read(string path) => System.Text.Encoding.UTF8.GetBytes(Rules);

        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;
    }
}
