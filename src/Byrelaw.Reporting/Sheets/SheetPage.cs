using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Sheets;

/// <summary>The page of a morning that is to come: a preview, without a box, a blank or a number, for what is ticked on paper of next week stays ticked.</summary>
internal static class SheetPage
{
    public static Page Of(Plan plan, MorningSheet sheet, bool isInPlan = true)
    {
        var part = new DocumentBuilder().Heading(1, SheetWords.Title(sheet))
            .Sentence(SheetWords.Silence(plan, sheet.Session))
            .Sentence(SheetWords.Preview(sheet));
        switch (sheet)
        {
            case HormoneSheet hormones:
                HormonePart.Add(part, plan, hormones);
                break;
            case FindingSheet found:
                FindingPart.Add(part, plan, found);
                break;
            case TransferSheet transfer:
                TransferPart.Add(part, plan, transfer);
                break;
        }

        if (isInPlan)
        {
            part.Sentence($"{Wording.Link("The plan", "../index.md")} says why these and not others, and what else is to be done.");
        }

        return new Page(SheetWords.Path(sheet), $"Preview: {SheetWords.Title(sheet)}", SheetWords.Head(plan, sheet),
        [
            part.As("sheet"),
            CautionsPart.Of(sheet.Work == SheetWork.Hormones),
        ]);
    }
}
