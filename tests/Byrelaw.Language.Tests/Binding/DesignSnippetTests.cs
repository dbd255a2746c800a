namespace Byrelaw.Language.Tests.Binding;

/// <summary>The texts with which the language is described, read whole.</summary>
public sealed class DesignSnippetTests
{
    private const string Words = """
        event calving                 also calvings, calved, not before 15 months of age
        event heat                    also heats, oestrus, estrus, bulling
        event mating                  also matings, service, services, insemination
        event mastitis
        event purchase                joins the herd
        event sale                    leaves the herd
        event death                   leaves the herd
        event bull in
        event bull out
        spell running with bull       from bull in until bull out, or in a mob with a male from 6 months of age
        measure serum copper          in umol/L, molar mass 63.546
        measure body condition        on scale 1 to 10
        measure weight                in kg
        test BVD virus                answers positive, negative
        test uterine check            answers clean, discharge
        fact breed                    is one of Friesian, Jersey, crossbred
        fact breeding index           is number
        fact mature weight            in kg
        fact dam genomic date         is date

        """;

    [Fact]
    public void The_words_of_the_farm_are_declared()
    {
        var words = Rules.Good(Words).Vocabulary;
        words.Kinds.Select(kind => kind.Name).ShouldBe([
            "mob", "calving", "heat", "mating", "mastitis", "purchase", "sale", "death", "bull in", "bull out",
            "serum copper", "body condition", "weight", "BVD virus", "uterine check"]);
        words.Kinds.Select(kind => kind.Id).ShouldBe(Enumerable.Range(0, 15));
        words.Calving.ShouldNotBeNull().NotBeforeAge.ShouldBe(new TimeLength(15, TimeUnit.Months));
        words.FindKind("OESTRUS").ShouldNotBeNull().Name.ShouldBe("heat");
        ((EventKind)words.FindKind("purchase")!).Effect.ShouldBe(HerdEffect.Joins);
        ((EventKind)words.FindKind("death")!).Effect.ShouldBe(HerdEffect.Leaves);
        var copper = (MeasureKind)words.FindKind("serum copper")!;
        (copper.Unit?.Symbol, copper.MolarMass, copper.InTheYards).ShouldBe(("umol/L", 63.546, false));
        var condition = (MeasureKind)words.FindKind("body condition")!;
        (condition.Scale, condition.InTheYards).ShouldBe((new Scale(1, 10), true));
        ((TestKind)words.FindKind("BVD virus")!).Answers.ShouldBe(["positive", "negative"]);
        words.Facts.Select(fact => fact.Type).ShouldBe([FactType.OneOf, FactType.Number, FactType.Amount, FactType.Date]);
        var spell = words.Spells.Single();
        (spell.Name, spell.From.Name, spell.Until.Name).ShouldBe(("running with bull", "bull in", "bull out"));
        words.MobMove.IsMobMove.ShouldBeTrue();
    }

    [Fact]
    public void Rules_and_preferences_are_read()
    {
        var rulebook = Rules.Good(Words + """
            event transfer  also transfers
            test pregnancy test  answers pregnant, empty  in the yards
            define empty
              any of
                - no mating or transfer since last calving
                - latest pregnancy test from 28 days after last mating or transfer is empty

            rules for recipients

            rule "Eight weeks calved"
              applies to cows
              needs at least 56 days since last calving
              because "The uterus needs about eight weeks to clean up and shrink after calving."
              source "common practice"

            safety rule "Not in calf"
              needs empty
              because "Prostaglandin and the passing of a pipette end a pregnancy."
              source "common practice"

            rule "Body condition"
              needs latest body condition in the last 45 days between 4.0 and 5.5
              if not known ask
              because "..."
              source "..."

            prefer "Settled in milk"
              between 60 and 120 days since last calving
              counts 2
              because "..."
            """);
        rulebook.Rules.Select(rule => (rule.Name, rule.List, rule.IsSafety, rule.Audience, rule.IfNotKnown)).ShouldBe([
            ("Eight weeks calved", "recipients", false, Audience.Cows, IfNotKnown.Ask),
            ("Not in calf", "recipients", true, Audience.Everyone, IfNotKnown.Ask),
            ("Body condition", "recipients", false, Audience.Everyone, IfNotKnown.Ask)]);
        rulebook.Prefers.Select(prefer => (prefer.Name, prefer.Counts)).ShouldBe([("Settled in milk", 2)]);
    }

    [Fact]
    public void A_farms_file_is_read()
    {
        var files = new RuleFilesInMemory()
            .Add("rulesets/recipients.byre", Words + """
                event transfer  also transfers
                event metritis
                event retained membranes
                rules for recipients
                rule "A"
                  needs no heat ever
                  because "b"
                rules for donors
                rule "B"
                  needs no heat ever
                  because "b"
                """)
            .Add("farms/withy-bend/farm.byre", """
                use "../../rulesets/recipients.byre"

                records "records"
                  up to 2026-09-20
                  complete for calving, heat, mating, transfer, bull in, bull out since 2024-06-01
                  complete for mastitis, metritis, retained membranes since 2025-06-01
                  leave out foot trim

                programme "Withy Bend, spring 2026"
                  collection on 2026-10-12
                  transfer 8 days after collection, over 2 days
                  date planned start of mating on 2026-10-26
                  choose donors from "1021", "1188", judged on collection, for looking only
                  choose recipients from females, judged from first transfer to final transfer, for looking only
                """);
        var rulebook = Rules.Good(Language.Reading.RulebookReader.Read("farms/withy-bend/farm.byre", files).ShouldNotBeNull());
        var records = rulebook.Records.ShouldNotBeNull();
        (records.Folder, records.UpTo).ShouldBe(("records", new LocalDate(2026, 9, 20)));
        records.Complete.Select(complete => (complete.Kinds.Length, complete.Since)).ShouldBe([(6, new LocalDate(2024, 6, 1)), (3, new LocalDate(2025, 6, 1))]);
        records.LeaveOut.Select(left => left.Word).ShouldBe(["foot trim"]);
        var programme = rulebook.Programme.ShouldNotBeNull();
        programme.Dates.Select(date => (date.Name, date.Date)).ShouldBe([
            ("collection", new LocalDate(2026, 10, 12)), ("first transfer", new LocalDate(2026, 10, 20)),
            ("final transfer", new LocalDate(2026, 10, 21)), ("planned start of mating", new LocalDate(2026, 10, 26))]);
        programme.FinalTransfer.ShouldBe(new LocalDate(2026, 10, 21));
        programme.Choices.Select(choice => (choice.List, choice.From, choice.JudgedFrom, choice.JudgedTo)).ShouldBe([
            ("donors", ChoiceFrom.Named, new LocalDate(2026, 10, 12), new LocalDate(2026, 10, 12)),
            ("recipients", ChoiceFrom.Females, new LocalDate(2026, 10, 20), new LocalDate(2026, 10, 21))]);
        programme.Choices[0].Animals.ShouldBe(["1021", "1188"]);
    }

    [Fact]
    public void A_list_may_be_drawn_from_another()
    {
        var rulebook = Rules.Good(Words + """
            rules for treatment
            rule "A"
              needs no heat ever
              because "b"
            rules for recipients
            rule "B"
              needs no heat ever
              because "b"
            programme "P"
              choose treatment from heifers, judged on 2026-10-04, for looking only
              choose recipients from treatment, judged on 2026-10-20, for looking only
            """);
        var choice = rulebook.Programme.ShouldNotBeNull().Choices[1];
        (choice.From, choice.OtherList).ShouldBe((ChoiceFrom.AnotherList, "treatment"));
    }
}
