namespace Byrelaw.Language.Tests.Layers;

public sealed class LayerTests
{
    private const string Base = """
        event calving
        event heat
        rules for recipients
        rule "Calved"
          applies to calvers
          needs at least 56 days since last calving
          if not known exclude
          because "Base reason."
          source "Base source"
        rule "Weighed"
          needs no heat ever
          because "Base reason."
        prefer "In heat"
          at least 1 heat ever
          counts 2
          because "Base reason."
        define calvers
          at least 1 calving ever

        """;

    private const string Agreed = "\n  because \"Local reason.\"\n  agreed by \"vet\" on 2026-06-14\n";

    [Fact]
    public void A_change_replaces_only_the_lines_that_it_states()
    {
        var rule = Farm("change \"Calved\"\n  needs at least 63 days since last calving" + Agreed).Rules[0];
        CanonicalText.Of(rule.Needs).ShouldBe("at least 63 days since last calving");
        (rule.Audience, rule.IfNotKnown, rule.Because, rule.Source).ShouldBe((Audience.Named, IfNotKnown.Exclude, "Local reason.", "Base source"));
        rule.Basis.ShouldBe(Basis.Changed);
        rule.Agreement.ShouldNotBeNull().By.ShouldBe(["vet"]);
        rule.Agreement.On.ShouldBe(new LocalDate(2026, 6, 14));
        rule.Span.Line.ShouldBe(2);
        CanonicalText.Of(rule.Before.ShouldNotBeNull().Needs).ShouldBe("at least 56 days since last calving");
        rule.Before.Basis.ShouldBe(Basis.Base);
    }

    [Fact]
    public void A_change_of_a_preference_replaces_only_the_lines_that_it_states()
    {
        var prefer = Farm("change \"In heat\"\n  counts 5" + Agreed).Prefers.Single();
        (prefer.Counts, prefer.Basis).ShouldBe((5, Basis.Changed));
        prefer.Condition.ShouldBeOfType<CountCondition>();
        prefer.Before.ShouldNotBeNull().Counts.ShouldBe(2);
    }

    [Fact]
    public void Several_changes_apply_in_order()
    {
        var rule = Farm(
            "change \"Calved\"\n  needs at least 63 days since last calving" + Agreed
            + "change \"Calved\"\n  if not known ask" + Agreed).Rules[0];
        CanonicalText.Of(rule.Needs).ShouldBe("at least 63 days since last calving");
        rule.IfNotKnown.ShouldBe(IfNotKnown.Ask);
        rule.Before.ShouldNotBeNull().Before.ShouldNotBeNull().Before.ShouldBeNull();
    }

    [Fact]
    public void A_change_in_the_same_file_leaves_the_basis()
    {
        var files = new RuleFilesInMemory().Add("farm.byre", "use \"base.byre\"\n")
            .Add("base.byre", Base + "change \"Calved\"\n  needs at least 63 days since last calving" + Agreed);
        Rules.Good(Rules.Read(files)).Rules[0].Basis.ShouldBe(Basis.Base);
        Rules.Good(Rules.Read(new RuleFilesInMemory().Add("farm.byre", Base))).Rules[0].Basis.ShouldBe(Basis.Local);
    }

    [Fact]
    public void A_dropped_rule_is_gone_and_remembered()
    {
        var rulebook = Farm("drop \"Weighed\"" + Agreed);
        rulebook.Rules.Select(rule => rule.Name).ShouldBe(["Calved"]);
        var drop = rulebook.Drops.Single();
        (drop.Rule.Name, drop.Because, drop.Agreement.On).ShouldBe(("Weighed", "Local reason.", new LocalDate(2026, 6, 14)));
    }

    [Fact]
    public void A_waiver_holds_for_one_animal_until_its_day()
    {
        var waiver = Farm("waive \"Weighed\" for \"1423\"\n  until 2026-10-31" + Agreed).Waivers.Single();
        (waiver.Rule, waiver.Animal, waiver.Until).ShouldBe(("Weighed", "1423", new LocalDate(2026, 10, 31)));
    }

    [Fact]
    public void What_was_agreed_later_than_the_day_as_known_does_not_exist()
    {
        const string local = "change \"Calved\"\n  needs at least 63 days since last calving" + Agreed
            + "drop \"Weighed\"" + Agreed + "waive \"Calved\" for \"1\"\n  until 2026-10-31" + Agreed
            + "rules for recipients\nrule \"Late\"\n  needs no heat ever" + Agreed;
        var before = Farm(local, new LocalDate(2026, 6, 13));
        before.Rules.Select(rule => (rule.Name, rule.Before)).ShouldBe([("Calved", null), ("Weighed", null)]);
        (before.Drops.Length, before.Waivers.Length).ShouldBe((0, 0));
        var onTheDay = Farm(local, new LocalDate(2026, 6, 14));
        onTheDay.Rules.Select(rule => rule.Name).ShouldBe(["Calved", "Late"]);
        (onTheDay.Drops.Length, onTheDay.Waivers.Length).ShouldBe((1, 1));
    }

    [Fact]
    public void A_file_reached_twice_is_read_once()
    {
        var files = new RuleFilesInMemory().Add("farm.byre", "use \"a.byre\"\nuse \"sub/../b.byre\"\n")
            .Add("a.byre", "use \"base.byre\"\n").Add("b.byre", "use \"base.byre\"\n").Add("base.byre", Base);
        var rulebook = Rules.Good(Rules.Read(files));
        rulebook.Files.Select(file => file.Path).ShouldBe(["farm.byre", "a.byre", "base.byre", "b.byre"]);
        rulebook.Rules.Length.ShouldBe(2);
    }

    [Fact]
    public void A_layer_gives_declared_words_further_names()
    {
        var rulebook = Farm("call heat  also seen bulling, put to AB\ndefine it\n  no seen bulling or put to AB ever\n");
        rulebook.Vocabulary.FindKind("put to AB").ShouldNotBeNull().Name.ShouldBe("heat");
    }

    private static Rulebook Farm(string local, LocalDate? knownOn = null)
    {
        var files = new RuleFilesInMemory().Add("farm.byre", "use \"base.byre\"\n" + local).Add("base.byre", Base);
        return Rules.Good(Language.Reading.RulebookReader.Read("farm.byre", files, knownOn).ShouldNotBeNull());
    }
}
