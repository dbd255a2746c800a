using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>The page of a numbered sheet: what goes into the yards and comes back.</summary>
internal static class DrawnPage
{
    /// <summary>What stands where somebody is to write.</summary>
    public const string Blank = Blanks.Line;

    /// <summary>A box to tick.</summary>
    public const string Box = Blanks.Box;

    public static Page Of(Plan plan, NumberedSheet sheet) => new(sheet.FileName, Title(sheet), Head(plan, sheet),
    [
        Main(plan, sheet, new DocumentBuilder().Heading(1, Title(sheet))).As("sheet"),
        CautionsPart.Of(sheet.Drawn.Work == "H"),
    ]);

    /// <summary>The same for a terminal, but for the general cautions.</summary>
    public static string OnTerminal(Plan plan, NumberedSheet sheet, Ink ink) =>
        Main(plan, sheet, new DocumentBuilder().Heading(1, Title(sheet)).Sentence(Head(plan, sheet).InALine)).Sentence(Page.Foot).OnTerminal(ink);

    private static DocumentBuilder Main(Plan plan, NumberedSheet sheet, DocumentBuilder part)
    {
        part.Sentence(sheet.IsRehearsal ? Wording.Bold("REHEARSAL: nobody is to be handled or given anything by this paper. It puts nobody in doubt.") : "")
            .Sentence(SheetWords.Silence(plan, sheet.Drawn.Morning.Session))
            .Sentence(Replaced(sheet.Drawn));
        switch (sheet.Drawn.Morning)
        {
            case HormoneSheet hormones:
                DrawnHormones.Add(part, plan, sheet.Drawn, hormones);
                break;
            case FindingSheet found:
                DrawnFindings.Add(part, plan, sheet.Drawn, found);
                break;
        }

        DrawnTakenOff.Add(part, sheet.Drawn);
        return part.Gap()
            .Sentence(sheet.IsRehearsal ? "In earnest every row would come back: done, or not done and why; until then whoever stands on it would be in doubt, and offered nothing."
                : "Every row comes back: done, or not done and why. Until a row is on record whoever stands on it is in doubt, and is offered nothing.")
            .Sentence($"To write it down: fill in {sheet.FileName}.csv (or the .xlsx), then byrelaw record PROGRAMME {sheet.FileName}.csv{(sheet.IsRehearsal ? " --out COPY" : "")}.");
    }

    private static string Title(NumberedSheet sheet) => $"{(sheet.IsRehearsal ? $"{NumberedSheet.Rehearsal} · " : "")}{SheetWords.Title(sheet.Drawn.Morning)} · {sheet.Number[(sheet.IsRehearsal ? NumberedSheet.Rehearsal.Length + 1 : 0)..]}";

    private static PageHead Head(Plan plan, NumberedSheet sheet) => new(PlanHead.Name(plan), Reached(plan, sheet), new("void after", Dates.Long(sheet.Drawn.Morning.Date)))
    {
        Devices = DeviceWords.Of(plan.Draft),
        HoldsTo = sheet.Drawn.Morning.Date,
    };

    private static HeadFact Reached(Plan plan, NumberedSheet sheet) => SheetWords.Reached(plan, sheet.Drawn.Morning) is var fact && Said(plan) is var said ? fact with { Value = fact.Value + said } : fact;

    private static string Said(Plan plan) => plan.Draft.Rulebook.Records?.RecordsTo is null ? "" : ", said for this run";

    private static string Replaced(DrawnSheet drawn) => drawn.Replaces.IsEmpty ? ""
        : $"Replaces {Phrases.And([.. drawn.Replaces])}: if {(drawn.Replaces.Length == 1 ? "that" : "one of them")} was used, record it first.";
}
