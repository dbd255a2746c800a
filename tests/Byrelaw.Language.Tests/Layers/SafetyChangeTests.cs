namespace Byrelaw.Language.Tests.Layers;

/// <summary>A change of a safety rule adds to what it asks, whoever writes it; nothing that a file says can loosen one.</summary>
public sealed class SafetyChangeTests
{
    private const string Agreed = "\n  because \"Local reason.\"\n  agreed by \"vet\" on 2026-06-14\n";

    private const string Base = Rules.Words + """
        define cleared
          any of
            - no mating since last calving
            - latest pregnancy test from 28 days after last mating is empty
        rules for recipients
        safety rule "Not served lately"
          needs no mating in the last 27 days
          because "Base reason."
        safety rule "Not in calf"
          applies to cows
          needs any of
            - no mating since last calving
            - latest pregnancy test from 28 days after last mating is empty
          because "Base reason."
        safety rule "Cleared up"
          needs all of
            - cleared
            - no drying off in the last 150 days
          because "Base reason."

        """;

    [Theory]
    [InlineData("Not served lately", "no mating in the last 35 days", "no mating in the last 35 days")]
    [InlineData("Not served lately", "no mating or transfer in the last 27 days", "no mating or transfer in the last 27 days")]
    [InlineData("Not served lately", "all of\n    - no mating in the last 27 days\n    - no mastitis ever", "no mating in the last 27 days; and no mastitis ever")]
    [InlineData("Not in calf", "no mating since last calving", "no mating since last calving")]
    [InlineData("Not in calf", "any of\n    - no mating since last calving\n    - latest pregnancy test from 35 days after last mating is empty", "either no mating since last calving; or latest pregnancy test from 35 days after last mating is empty")]
    [InlineData("Not in calf", "latest pregnancy test from 28 days after last mating is empty", "latest pregnancy test from 28 days after last mating is empty")]
    [InlineData("Cleared up", "all of\n    - cleared\n    - no drying off in the last 200 days", "cleared; and no drying off in the last 200 days")]
    public void What_is_proved_stricter_is_shown_alone_and_asked_with_the_rest(string rule, string needs, string shown)
    {
        var changed = Rules.Good(Read($"change \"{rule}\"\n  needs {needs}{Agreed}")).Rules.Single(one => one.Name == rule);
        CanonicalText.Of(changed.Shown).ShouldBe(shown);
        var asked = changed.Needs.Written().Select(CanonicalText.Of).ToHashSet();
        changed.Before.ShouldNotBeNull().Needs.Written().Select(CanonicalText.Of).ShouldAllBe(old => asked.Contains(old));
        changed.Stated.Written().Select(CanonicalText.Of).ShouldAllBe(now => asked.Contains(now));
        changed.IsBroken.ShouldBeFalse();
    }

    [Theory]
    [InlineData("Not served lately", "no mating in the last 20 days")]
    [InlineData("Not served lately", "any of\n    - no mating in the last 27 days\n    - no heat ever")]
    [InlineData("Not in calf", "any of\n    - no mating since last calving\n    - latest pregnancy test from 28 days after last mating is empty\n    - no heat ever")]
    [InlineData("Not in calf", "any of\n    - no mating since last calving\n    - latest pregnancy test from 20 days after last mating is empty")]
    [InlineData("Not in calf", "any of\n    - at least 1 mating ever\n    - no mating ever")]
    [InlineData("Cleared up", "cleared")]
    [InlineData("Not served lately", "age at least 1 day")]
    public void What_is_proved_looser_is_an_error_and_nobody_passes(string rule, string needs) => Broken("B0720", rule, $"change \"{rule}\"\n  needs {needs}{Agreed}");

    [Theory]
    [InlineData("latest pregnancy test since last calving is empty")] // no test at all would be not known, where no mating met it
    [InlineData("none of\n    - latest pregnancy test since last calving is pregnant")]
    public void What_may_be_met_where_the_other_is_not_known_is_not_taken_for_stricter_or_looser(string needs) =>
        Read($"change \"Not served lately\"\n  needs {needs}{Agreed}").Problems.Select(problem => problem.Code).ShouldBe(["B0721"]);

    [Fact]
    public void A_misspelt_expectation_gets_the_nearest_name() => Rules.Problems(
        "use base vocabulary edition 1\n\nchange \"A calf has a fathr\"\n  every calving comes 250 to 310 days after mating" + Agreed).ShouldContain("did you mean `A calf has a father`");

    [Fact]
    public void What_is_neither_is_asked_besides_with_a_warning()
    {
        var reading = Read("change \"Not in calf\"\n  needs no mastitis in the last 14 days" + Agreed);
        reading.Problems.Select(problem => (problem.Code, problem.Severity)).ShouldBe([("B0721", Severity.Warning)]);
        var rule = reading.Rulebook.Rules.Single(rule => rule.Name == "Not in calf");
        CanonicalText.Of(rule.Needs).ShouldBe(
            "(either no mating since last calving; or latest pregnancy test from 28 days after last mating is empty); and no mastitis in the last 14 days");
        CanonicalText.Of(rule.Shown).ShouldBe(CanonicalText.Of(rule.Needs));
    }

    [Fact]
    public void Every_layer_adds_and_none_undoes_what_one_below_it_added()
    {
        var files = new RuleFilesInMemory().Add("base.byre", Base)
            .Add("region.byre", "use \"base.byre\"\nchange \"Not served lately\"\n  needs no mating in the last 42 days" + Agreed)
            .Add("farm.byre", "use \"region.byre\"\nchange \"Not served lately\"\n  needs no transfer in the last 30 days\n  if not known exclude" + Agreed);
        var rule = Rules.Read(files).Rulebook.Rules[0];
        CanonicalText.Of(rule.Needs).ShouldBe("no mating in the last 27 days; no mating in the last 42 days; and no transfer in the last 30 days");
        CanonicalText.Of(rule.Shown).ShouldBe("no mating in the last 42 days; and no transfer in the last 30 days");
        (rule.IfNotKnown, rule.IsBroken).ShouldBe((IfNotKnown.Exclude, false));
        Broken("B0720", "Not served lately", files.Add("farm.byre", "use \"region.byre\"\nchange \"Not served lately\"\n  needs no mating in the last 35 days" + Agreed));
    }

    [Fact]
    public void Two_layers_side_by_side_both_add()
    {
        var files = new RuleFilesInMemory().Add("base.byre", Base)
            .Add("north.byre", "use \"base.byre\"\nchange \"Not served lately\"\n  needs no mating in the last 42 days" + Agreed)
            .Add("south.byre", "use \"base.byre\"\nchange \"Not served lately\"\n  needs no mating or transfer in the last 42 days" + Agreed)
            .Add("farm.byre", "use \"north.byre\"\nuse \"south.byre\"\n");
        var rule = Rules.Good(Rules.Read(files)).Rules[0];
        CanonicalText.Of(rule.Shown).ShouldBe("no mating or transfer in the last 42 days");
        rule.IsBroken.ShouldBeFalse();
    }

    [Theory]
    [InlineData("B0719", "  applies to heifers\n  needs no mating in the last 35 days")]
    [InlineData("B0719", "  on the day")]
    [InlineData("B0719", "  if not known ask")]
    [InlineData("B0606", "  if not known pass")]
    public void Lines_that_could_only_take_away_are_errors(string code, string lines) => Broken(code, "Not served lately", $"change \"Not served lately\"\n{lines}{Agreed}");

    [Theory]
    [InlineData("B0722", "  needs no mating in the last 27 days\n  on the day")]
    [InlineData("B0606", "  needs no mating in the last 27 days\n  if not known pass")]
    [InlineData("B0723", "  needs official identity is not recorded")]
    [InlineData("B0723", "  needs none of\n    - official identity is recorded")]
    [InlineData("B0723", "  needs any of\n    - no mating ever\n    - unmarked")]
    [InlineData("B0723", "  applies to marked\n  needs no mating ever")]
    [InlineData("B0724", "  needs any of\n    - no mating in the last 27 days\n    - at least 1 mating in the last 30 days")]
    [InlineData("B0724", "  applies to both\n  needs no mating ever")]
    public void A_safety_rule_that_bars_nobody_or_hangs_on_what_may_be_lost_is_an_error(string code, string lines) => Broken(
        code, "Own",
        "define marked\n  official identity is recorded\ndefine unmarked\n  not marked\ndefine both\n  all of\n    - age at least 3 years\n    - age at most 2 years\n"
        + $"rules for recipients\nsafety rule \"Own\"\n{lines}\n  because \"b\"\n");

    [Fact]
    public void That_it_passes_cannot_be_accepted()
    {
        var reading = Read("accept \"Not in calf\" as passing what is not known" + Agreed);
        reading.Problems.Select(problem => problem.Code).ShouldBe(["B0725"]);
        reading.Rulebook.Acceptances.ShouldBeEmpty();
    }

    [Fact]
    public void A_change_that_is_agreed_later_adds_nothing_yet()
    {
        var files = Files("change \"Not served lately\"\n  needs no mating in the last 42 days" + Agreed);
        var rule = RulebookReader.Read("farm.byre", files, today: new LocalDate(2026, 6, 13)).ShouldNotBeNull().Rulebook.Rules[0];
        CanonicalText.Of(rule.Needs).ShouldBe("no mating in the last 27 days");
    }

    [Theory]
    [InlineData("define cleared\n  no heat ever\n")]
    [InlineData("change \"cleared\"\n  needs no heat ever" + Agreed)]
    [InlineData("event mating  not before 9 years of age\n")]
    public void What_a_safety_rule_speaks_of_cannot_be_written_anew(string local)
    {
        var reading = Read(local);
        reading.Problems.ShouldContain(problem => problem.Severity == Severity.Error);
        var rulebook = reading.Rulebook;
        (rulebook.Rules.Single(rule => rule.Name == "Cleared up").IsBroken || !rulebook.BrokenParts.IsEmpty
            || ((EventKind)rulebook.Vocabulary.FindKind("mating")!).NotBeforeAge is null).ShouldBeTrue();
    }

    [Fact]
    public void A_changed_safety_rule_reads_back_the_same()
    {
        var rulebook = Read(
            "change \"Not in calf\"\n  needs no mastitis in the last 14 days" + Agreed + "change \"Not in calf\"\n  if not known exclude" + Agreed).Rulebook;
        var text = CanonicalText.Of(rulebook);
        CanonicalText.Of(Rules.Read(text).Rulebook).ShouldBe(text);
        text.ShouldContain("change \"Not in calf\"\n  needs no mastitis in the last 14 days\n");
    }

    private static void Broken(string code, string rule, string local) => Broken(code, rule, Files(local));

    private static void Broken(string code, string rule, RuleFilesInMemory files)
    {
        var reading = Rules.Read(files);
        reading.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Code).Distinct().ShouldBe([code]);
        reading.Rulebook.Rules.Single(one => one.Name == rule).IsBroken.ShouldBeTrue();
    }

    private static RulebookReading Read(string local) => Rules.Read(Files(local));

    private static RuleFilesInMemory Files(string local) => new RuleFilesInMemory().Add("farm.byre", "use \"base.byre\"\n" + local).Add("base.byre", Base);
}
