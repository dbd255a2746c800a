namespace Byrelaw.Language.Tests.Support;

/// <summary>Texts in the language that several tests read.</summary>
public static class Snippets
{
    /// <summary>One rule file with every kind of line and condition; <see cref="Rules.Words"/> stand above it.</summary>
    public const string Everything = """
        call heat  also seen bulling
        hint AI, KI may be mating
        add sour , "very wild" to breed
        add to mating  with purpose is one of calf, flushing, with sire is text
        event weighing  with method is one of scale, tape, blank is tape, with belly in cm, with ease on scale 1 to 5
        event death  also died, leaves the herd for good
        event aspiration  marks collection
        event thawing  of embryos
        measure liver zinc  in umol/kg  plausible 1 to 20000
        fact frame height  in cm  plausible 60 to 200
        spell beside a bull  from bull in until bull out, or in a mob with a male from 6 months of age

        safety expectation "A calf has a father"
          every calving comes 200 to 320 days after mating or transfer or running with bull
          else mating, transfer, bull in, bull out are not complete, over 2%
          because "A calf without a father means that something was not written down."
          source "common practice, no source"

        expectation "A positive is looked at again"
          every positive BVD virus comes at most 3 months before negative BVD virus
          else BVD virus is not complete for her

        change "A calf has a father"
          every calving comes 230 to 310 days after mating or transfer or running with bull
          because "Ours are carried so long."
          agreed by "herd vet" on 2026-06-14

        change "A calf has a father"
          else mating, transfer, bull in, bull out, heat are not complete, over 1%
          because "All that was written is written."
          source "example"
          agreed by "herd vet" on 2026-06-14

        expectation "Illness is written down"
          at least 1 mastitis a year for every 20 cows
          else mastitis is not complete

        define empty
          any of
            - no mating or transfer since last calving
            - latest pregnancy test from 28 days after last mating or transfer is empty
            - latest pregnancy test from day 28 of last transfer is empty
            - at least day 24 of last transfer
            - latest pregnancy test from 35 days after last running with bull is empty
            - no weighing with method not tape with belly at least 60 cm with ease recorded in the last 30 days

        define cycling
          at least 2 of
            - at least 1 heat or mating since last calving
            - between 6 and 8 days since last heat
            - at most 2 transfers since birth

        rules for recipients

        rule "Eight weeks calved"
          applies to cows
          needs at least 56 days since last calving
          if not known exclude
          because "The uterus needs about eight weeks "
            "to clean up."
          source "common practice"

        safety rule "Not in calf"
          applies to cycling
          needs empty
          because "A pipette ends a pregnancy."

        rule "Looks right"
          on the day
          needs all of
            - no positive BVD virus or mastitis ever
            - age between 13 months and 12 years
            - parity at most 6
            - breed is not one of Friesian, Jersey
            - dam genomic date is 2026-02-01
            - official identity is recorded
            - breeding index not in the top 20% of the herd
            - breeding index in the top 50% of heifers
            - latest body condition in the last 45 days between 4.0 and 5.5
            - change in body condition since last calving at least -1
            - average weight of the last 3 results in the last 2 years at least 300 kg
            - every BVD virus of the last 2 results is negative
            - lowest weight since 2026-01-01 at least 60% of mature weight
            - highest weight at least 28 days ago more than 300 kg
            - average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg
            - at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals
            - latest uterine check between 28 and 365 days ago is clean
            - no metritis in the 21 days after last calving
            - at least 2 heat between 18 and 24 days apart since last calving
            - no mating before first transfer
            - not running with bull in the 35 days before collection
            - not in mob River or "Once-a-day"
            - not cycling
          because "All of it counts."
          agreed by "herd vet" on 2026-06-14

        prefer "Settled in milk"
          between 60 and 120 days since last calving
          counts 2
          because "Past the peak."

        change "Eight weeks calved"
          needs at least 63 days since last calving
          because "Cows were slow to clean up."
          agreed by "herd vet", "farmer" on 2026-06-14

        drop "Looks right"
          because "No time."
          agreed by "adviser" on 2026-06-14

        waive "Eight weeks calved" for "1423"
          until 2026-10-31
          because "Scanned clean."
          agreed by "herd vet" on 2026-09-20

        accept "Eight weeks calved" as implied by "Two months clean"
          because "It is said twice on purpose."
          agreed by "herd vet" on 2026-09-20

        records "records"
          up to 2026-09-20
          complete for calving, heat, bull in since 2024-06-01
          complete for mastitis since 2024-06-01 until 2026-07-31
          complete for mastitis since 2026-08-15
            because "From today every case goes in the book."
            agreed by "farmer", "herd vet" on 2026-08-15
          no transfer on this farm since 2019-01-01
          same animal "1021", "21"
            because "Her old number from before the tags."
            agreed by "farmer" on 2026-09-01
          not the same animal "1044", "1144"
            because "Both tags read in the yard."
            agreed by "farmer" on 2026-09-01
          method of weighing is scale
          leave out foot trim
          leave out AI, which is not mating

        programme "Withy Bend, spring 2026"
          collection on 2026-10-12
          transfer 8 days after collection, over 2 days
          date planned start of mating on 2026-10-26
          choose donors from "1021", "1188", judged on collection, nothing given
          choose recipients from females, judged from first transfer to final transfer, for looking only

        rules for donors

        rule "Two months clean"
          needs no mastitis in the 60 days before collection
          because "Eggs remember."
        """;
}
