namespace Byrelaw.Language.Tests.Sources;

/// <summary>Every line about a source of records, once.</summary>
internal static class SourceSnippets
{
    public const string Everything = """
        records "export"
          up to 2026-09-30
          from "cows.csv", separated by semicolons, headings in rows 2 to 3, a row for each animal, as at 2026-09-30
            dates day first
            short years
            animal in "Line No"
            sex is F
            parity in "Lact", as at 2026-09-30
            parity on in "Lact day"
            mating in "Served"
            BVD virus in "BVD", dated in "Sampled"
              - "P" is positive
              - "-" is blank
            serum copper in "Cu", in umol/L, times 0.1, dated 2026-09-01
              - "9999" is pending
              - "low" is less than 3
            method of mating is natural
            last calving in "Calved", blank is never
            last heat in "Heat", blank is none since last calving
          from "diary.csv", headings in row 2, in Windows-1252, up to 2026-09-29, a row for each event
            decimal comma
            thousands point
            animal in "Tag", by official identity
            date in "Date"
            recorded in "Entered"
            kind in "Code"
              - "AI" is mating, method is inseminated, sire in "Detail"
              - "CU" where "Remark" is "serum" is serum copper, value in "Detail", in umol/L
              - "PD" is BVD virus, negative
              - "MR" is left out
            leave out rows where "State" is "cancelled"
            leave out columns "A", "B"
          from "herd.xlsx", sheet "Cows", a row for each animal
            thousands comma
            animal in "No", by number
            herd in "Herd"
          from "ade", as layout "ICAR ADE", times in "Pacific/Auckland"

        """;
}
