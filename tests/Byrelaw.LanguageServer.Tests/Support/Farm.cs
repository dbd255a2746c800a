namespace Byrelaw.LanguageServer.Tests.Support;

/// <summary>Rule files that most tests open.</summary>
internal static class Farm
{
    /// <summary>Words of a farm.</summary>
    public const string Words = """
        # Words of the farm.
        # A second line about them.
        event calving  also calvings, calved, not before 15 months of age
        event heat  also heats, bulling
        event mating
        event mastitis
        event bull in
        event bull out
        event sale  leaves the herd
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        measure serum copper  in umol/L, molar mass 63.546
        measure body condition  on scale 1 to 10
        measure body temperature  in degC
        test BVD virus  answers positive, negative
        fact breed  is one of Friesian, Jersey
        fact breeding index  is number

        """;

    /// <summary>Rules in those words.</summary>
    public const string Rules = """
        use "words.byre"

        define cycling
          at least 1 heat since last calving

        rules for recipients

        rule "Eight weeks calved"
          applies to cows
          needs at least 56 days since last calving
          because "The uterus needs time."
          source "common practice, no source"

        rule "Udder sound"
          needs no mastitis in the last 30 days
          because "A sore quarter takes her strength."

        rule "Cycling"
          needs cycling
          because "No egg without a heat."

        rule "Free of BVD"
          needs latest BVD virus ever is negative
          because "It spreads."

        prefer "Good condition"
          latest body condition in the last 45 days between 4.0 and 5.5
          counts 2
          because "Thin cows lose embryos."

        """;

    /// <summary>A programme over those rules.</summary>
    public const string Programme = """
        use "rules.byre"

        records "records"
          up to 2026-10-01
          complete for calving, heat, mastitis, mating since 2024-01-01

        programme "Low Moor, spring 2026"
          collection on 2026-10-12
          transfer 8 days after collection, over 2 days
          choose recipients from females, judged from first transfer to final transfer, for looking only

        change "Eight weeks calved"
          needs at least 63 days since last calving
          because "They were slow last year."
          agreed by "herd vet" on 2026-06-14

        """;

    /// <summary>Writes all of it, with a few animals.</summary>
    public static void Write(TemporaryFolder folder)
    {
        folder.Write("words.byre", Words);
        folder.Write("rules.byre", Rules);
        folder.Write("farm.byre", Programme);
        folder.Write("records/animals.csv", "animal,born,sex\n1,2020-08-01,F\n2,2020-08-01,F\n3,2020-08-01,F\n4,2020-08-01,F\n");
        folder.Write("records/events.csv", "date,animal,kind\n2026-07-01,1,calving\n2026-09-20,2,calving\n2026-07-01,3,calving\n2026-09-25,3,mastitis\n");
    }
}
