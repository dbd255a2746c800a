namespace Byrelaw.Language.Tests.Plans;

/// <summary>One farm's file with every statement of a plan; the words of the tests stand above it.</summary>
public static class PlanSnippets
{
    public const string Everything = """
        rules for donors
        rule "Two months clean"
          needs no mastitis in the 60 days before collection
          because "Eggs remember."
        rules for treatment
        rule "Forty days calved"
          needs at least 40 days since last calving
          because "Time to clean up."
        rules for recipients
        rule "Copper of the mob"
          needs average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg
          because "Copper is kept in the liver."

        programme "Withy Bend, spring 2026"
          wants 6 live heifer calves, 80% sure
          budget 30000 NZD
          agreed by "farmer", "herd vet", "adviser" on 2026-06-14
          costs shared "owner" 50%, "sharemilker" 50%
          semen costs shared "owner" 100%
          treatment costs shared "owner" 40%, "sharemilker" 60%
          transfer costs shared "owner" 30%, "sharemilker" 70%
          embryos made from collected eggs
          tank holds 6 frozen embryos with sexed semen
          semen sexed female
          calves of breed Friesian, Jersey
          region "North"
          collection on 2026-10-12, 3 times every 14 days
          transfer 8 days after collection, over 2 days
          date first treatment 8 days before collection
          date planned start of mating on 2026-10-26
          date drenching 3 weeks before first treatment
          recipients on day 6 to 9, within 2 days of the embryo
          prepare 24 recipients by "Progesterone insert"
          prepare recipients by "Prostaglandin once", "Natural heat"
          prepare "1031", "1040" by "Progesterone insert" for session 2
          calve by 2027-10-01
          holiday 2026-10-26 "Labour Day"
          choose donors from "1021", "1188", judged on collection, nothing given
          choose treatment from females, judged on first treatment
          choose recipients from females, judged from first transfer to final transfer

        visits "collection" in "North" every 14 days from 2026-07-06 to 2026-12-18
          on 2026-10-13
          not on 2026-08-03, Sundays, holidays
        visits "transfer" 8 days after "collection"

        caution prostaglandin "It ends a pregnancy. Read the label, and ask the vet."
          source "datasheets"

        method "Progesterone insert"
          day 0 "Insert the progesterone device; GnRH", device in
          day 7 evening "Remove the device; prostaglandin", device out
          day 9 evening "GnRH", 56 hours after day 7
          counts as heat on day 9
          accepted on the day 80%, weight 30
          costs 55 NZD per animal treated
          because "Every animal has a day."
          source "published schedules"

        method "Prostaglandin once"
          suits any of
            - at least 1 heat between 6 and 16 days ago
            - no mastitis in the 60 days before first transfer
          day 0 "Prostaglandin"
          in heat 70%, weight 40, on day 2 20%, day 3 45%, day 4 25%, day 5 10%
          heat seen 85%, from 17 of 20
          accepted on the day 90%
          if not seen by day 5, again on day 11 to 14
          because "Cheap."

        method "Natural heat"
          suits at least 1 heat in the last 24 days
          cycles every 21 days
          heat seen 80%
          accepted on the day 88%
          because "Nothing is given."

        method "Superovulation"
          for donors
          day 0 "Insert the progesterone device"
          day 4 morning "FSH"
          day 4 evening "FSH"
          day 6 "Prostaglandin"
          counts as heat on day 8
          flushed on day 15
          source "published schedules"

        yardstick "Prostaglandin once" used 65%
          because "So people say."
        yardstick cost per embryo transferred 400 NZD
          source "a price list"

        assume oocytes per collection 9, spread 6
        assume oocytes per collection of "1021" 22, spread 8, weight 6
        assume embryos per oocyte with sexed semen of "1021" 31%, weight 12
        assume asked and usable 60%, weight 10
        assume embryos per oocyte 22%, weight 50
        assume embryos per oocyte with sexed semen 17%, weight 20
        assume pregnant per transfer fresh in heifers 45%, from 36 of 80 transfers
        assume pregnant per transfer 40%, weight 20
        assume pregnant per transfer fresh in dry cows 38%, weight 20
        assume kept from first check to calving 81%, weight 40
        assume alive at a day old 95%
          source "national statistics"
        assume heifer per calf 47%, weight 100
        assume gestation of Friesian in cows 279.4 days, spread 5 days
        assume gestation 282 days, spread 5 days
          because "As people here count."
          agreed by "herd vet" on 2026-06-14
        assume days of keep per recipient 60 days
        assume cost per embryo transferred 400 NZD
        assume cost per day of keep 3.5 NZD
        assume cost per animal treated by "Natural heat" 2 NZD

        task "Sample the mob for copper"
          for recipients
          due 45 days before first transfer
          not before 90 days before first transfer
          takes 1 week
          results take 10 days
          settles "Copper of the mob", liver copper
          costs 30 NZD per sample
          because "Nobody guesses copper."
        task "Export tests"
          not needed
          because "The embryos stay here."
        task "Book the scanner"
          each session
          due 10 days after final transfer
          because "Pregnancies are counted on a day that is agreed."
        done "Book the scanner" on 2026-10-28 for session 2
        done "Sample the mob for copper" on 2026-08-20
        task "Look at every uterus"
          for recipients
          settles liver copper
          because "The rules say by when."
        task "Go or no-go: the inserts"
          each session
          decided by "farmer", "herd vet"
          due 2 days before first transfer
          if stopped "Nobody is treated. All go back to mating."
          because "Until then only samples are paid for."
        stopped session 2
          because "Too few recipients are in condition."
          agreed by "farmer", "herd vet" on 2026-06-14
        """;

    /// <summary>Lines that one programme cannot have beside those above.</summary>
    public const string OtherForms = """
        programme "Other"
          holidays "holidays.txt"
        """;
}
