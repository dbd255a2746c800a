namespace Byrelaw.Testing.Conditions;

/// <summary>
/// A rule file in which every kind of condition and of window stands, so that every table of kinds can be asked for every one.
/// <c>EveryKindTests</c> of Language fails where a kind is missing here.
/// </summary>
public static class EveryKind
{
    /// <summary>The file, which the reader has nothing to say of.</summary>
    public const string Text = """
        event calving
        event heat
        event mating
        event bull in
        event bull out
        event mastitis
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        measure weight  in kg
        measure body condition  on scale 1 to 10
        measure liver copper  in umol/kg, molar mass 63.546
        test virus  answers positive, negative, doubtful
        fact breeding index  is number
        fact mature weight  in kg
        fact breed  is one of Friesian, Jersey
        fact dam tested  is date
        fact official identity  is identity

        define clear
          no mastitis in the last 30 days

        rules for herd

        rule "All of it"
          needs all of
            - between 1 and 3 heat or mating since last calving
            - at least 2 heat or mating between 18 and 24 days apart since last calving
            - at least 3 positive virus at least 2 weeks apart ever
            - no positive virus from 5 days after last calving or mating
            - latest virus from 5 weeks after last running with bull is negative
            - at most 4 doubtful virus or heat between 4 weeks and 3 months ago
            - at least 1 heat since 2026-01-02
            - at least 1 heat since birth
            - no mastitis before last calving
            - no mastitis before collection
            - at most 2 heat in the 60 days after last calving or mating
            - no mastitis in the 30 days after 2026-01-02
            - no mastitis ever
            - between 30 and 90 days since last calving or mating
            - age between 13 months and 12 years
            - parity at most 6
            - breeding index between 90 and 120
            - mature weight at least 400 kg
            - breed is not one of Friesian, Jersey
            - dam tested is 2026-02-01
            - official identity is recorded
            - breeding index not in the top 20% of cows
            - breeding index in the top 10% of heifers with a value
            - latest body condition in the last 45 days between 4 and 5.5
            - change in body condition since last calving at least -1
            - lowest weight at least 28 days ago between 60% of mature weight and 90% of mature weight
            - latest virus in the 60 days before collection is not one of positive, doubtful
            - average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg
            - at most 1 of her mob with liver copper in the last 60 days less than 7 umol/kg, from at least 10 animals
            - not running with bull in the 35 days before collection
            - average body condition of the last 3 results in the last 2 years at least 4
            - every virus of the last 2 results is negative
            - every weight in the last 90 days at least 300 kg
            - running with bull
            - in mob Hill or "Once-a-day"
            - not in mob River
            - not clear
          because "Every kind stands here once at least."

        rule "One of two"
          needs at least 1 of
            - clear
            - parity at least 2
          because "A list that counts."

        records "records"
          up to 2026-09-20
          complete for calving, heat, mating, mastitis since 2024-06-01

        programme "Every kind"
          collection on 2026-10-12
          choose herd from females, judged on collection, for looking only
        """;
}
