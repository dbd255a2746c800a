using Byrelaw.Language.BaseRules;

namespace Byrelaw.Cli.Files;

/// <summary>What a farm's folder starts with.</summary>
public static class NewFarm
{
    /// <summary>Stands where only the farm knows; no rule file with it in can be read, so none is forgotten.</summary>
    public const string FillIn = "FILL-IN";

    /// <summary>The programme's file in the folder.</summary>
    public const string Programme = "programme.byre";

    private const string FillInFirst = $"# Replace every {FillIn} by a date such as 2026-10-12, then run:  byrelaw check {Programme}";

    /// <summary>How far ahead the collection of a programme that is only an example lies.</summary>
    private const int WeeksAhead = 8;

    /// <summary>Days from the first treatment to the collection, whose embryos go over eight days later: common practice, no source.</summary>
    private const int FirstTreatmentBefore = 9;

    private const string RecordsText =
        $"""
        records "records"
          # The day the book was last brought up to date. Nothing after it counts as "did not happen".
          up to {FillIn}
          # Only what is written down every single time it happens, and since when. Take out what is not.
          complete for calving, abortion, heat, mating, transfer, pregnancy test, bull in, bull out, drying off, purchase since {FillIn}
          # Take away the # ? before what is true of this farm too. Who signs a line for illness says that every single case is written down.
          # ? complete for hard calving, twins, retained membranes, metritis, milk fever, ketosis since {FillIn}
          # ? complete for mastitis, lameness, fever, pneumonia, displaced abomasum, injury since {FillIn}
          # ? complete for hormone given since {FillIn}
          # ? complete for transport, drench since {FillIn}
          # ? complete for leptospirosis vaccination since {FillIn}
          # All animals run together, and nobody writes down mobs; then the bull's days stand in events.csv as two rows for the herd:
          #   2025-12-20,herd,bull in  and  2026-01-17,herd,bull out
          # ? no mob on this farm
          # Every pregnancy test is a scan. Where nothing is said, a test counts as one by hand, which sees a calf two weeks later.
          # ? method is ultrasound
        """;

    /// <summary>The columns every <c>animals.csv</c> may have; a column for each declared fact follows.</summary>
    private const string AnimalColumns = "animal,official_id,born,sex,breed,mob,parity";

    /// <summary>The columns of <c>events.csv</c>.</summary>
    private const string EventColumns = "date,animal,kind,value,unit,note,recorded";

    /// <summary>The files of a farm that keeps its records in the landed form, by path within the folder.</summary>
    /// <param name="name">What the programme is called.</param>
    /// <param name="facts">Names of facts that the base rules ask for.</param>
    public static IReadOnlyList<(string Path, string Text)> Files(string name, IEnumerable<string> facts)
    {
        var columns = string.Join(',', [AnimalColumns, .. facts]);
        return
        [
            (Programme, ProgrammeText(name, FillInFirst, RecordsText, new DatesToPlan(FillIn, FillIn, "The day the first hormone would be given, and the day the embryos are collected."))),
            ("records/animals.csv", columns + "\n"),
            ("records/events.csv", EventColumns + "\n"),
        ];
    }

    /// <summary>The programme's file of a farm that keeps its records in files of its own: it judges at once, and asks about everything that nobody has said yet.</summary>
    /// <param name="name">What the programme is called.</param>
    /// <param name="records">The <c>records</c> block.</param>
    /// <param name="today">What day it is.</param>
    public static string ProgrammeFrom(string name, string records, LocalDate today)
    {
        var collection = today.PlusWeeks(WeeksAhead);
        return ProgrammeText(name, $"# The dates of the programme, and every line behind `# ?`, wait for you. Then run:  byrelaw draft {Programme}", records.TrimEnd('\n'), new DatesToPlan(
            Iso(collection.PlusDays(-FirstTreatmentBefore)), Iso(collection), $"Only an example, {WeeksAhead} weeks from the day this file was made: put your own."));
    }

    /// <summary>The facts that the base rules declare and that no fixed column holds.</summary>
    public static IReadOnlyList<string> FactsOf(Rulebook baseWords)
    {
        string[] fixedColumns = ["official identity", "breed"];
        return [.. baseWords.Vocabulary.Facts.Select(fact => fact.Name).Where(name => !fixedColumns.Contains(name))];
    }

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);

    private static string ProgrammeText(string name, string first, string records, DatesToPlan dates) =>
        $"""
        # {name}
        {first}

        # The words of one country, if you use them: take away the # before the line you want.
        # use base words new zealand edition {BaseEditions.Newest}
        # use base words britain and ireland edition {BaseEditions.Newest}
        # use base words north america edition {BaseEditions.Newest}

        # Whom the lists are for, and by which rules. Every rule there has its reason and its source beside it.
        # use base donors edition {BaseEditions.Newest}
        use base treatment edition {BaseEditions.Newest}
        use base recipients edition {BaseEditions.Newest}

        # More rules for recipients, each for those who have what it takes. Take away the # ? before the lines that are true of you.
        # Trace elements: every mob on record, and liver and blood of five to ten of its animals sent to a laboratory.
        # ? use base trace elements edition {BaseEditions.Newest}
        # Neospora: blood of every recipient sent to a laboratory once a year.
        # ? use base neospora edition {BaseEditions.Newest}
        # Leptospirosis: every vaccination written down, for each animal or for the mob.
        # ? use base leptospirosis edition {BaseEditions.Newest}
        # Condition: every recipient scored from 1 to 10 within 45 days before the transfer.
        # ? use base condition edition {BaseEditions.Newest}
        # Heifers grown enough: scales within 60 days before the transfer, and each heifer's mature weight.
        # ? use base heifer weight edition {BaseEditions.Newest}

        {records}

        programme "{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}"
          # {dates.Remark}
          date first treatment on {dates.FirstTreatment}
          collection on {dates.Collection}
          transfer 8 days after collection, over 2 days
          choose treatment from females, judged on first treatment
          choose recipients from females, judged from first transfer to final transfer

        # What is done differently on this farm goes below, each with its reason and who agreed, for example:
        #
        # change "Eight weeks calved"
        #   needs at least 63 days since last calving
        #   because "Cows were slow to clean up after last year's wet spring."
        #   agreed by "herd vet" on 2026-06-14

        """;

    /// <summary>The dates that a new programme starts with.</summary>
    private sealed record DatesToPlan(string FirstTreatment, string Collection, string Remark);
}
