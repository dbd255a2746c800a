namespace Byrelaw.Reporting.Pages;

/// <summary>A section of a list: its heading, what holds for all in it, and a row for each animal.</summary>
internal static class SectionPart
{
    /// <summary>From so many animals on a browser draws only the rows that are seen.</summary>
    private const int LongFrom = 300;

    public static Part Of(ListSection section, ListReport list, BothChecks? checks, YearAxis? axis, Func<string, string?> linkTo, string besides)
    {
        var rows = section.Animals.Select(animal => Row(new AnimalReport(list, animal), checks, axis, linkTo));
        return new DocumentBuilder().Heading(2, SectionWords.Heading(section, list)).Sentence($"{SectionWords.Of(section, list)} {besides}".TrimEnd(), Tone.Soft)
            .Draw(new ListRows($"{SectionWords.Name(section, list)}, {list.NameAndDays}", axis, [.. rows])).As(list.List.Animals.Length < LongFrom ? "group" : "group long", section.Anchor);
    }

    private static ListRow Row(AnimalReport report, BothChecks? checks, YearAxis? axis, Func<string, string?> linkTo) => new(report.Animal.Number, linkTo(report.Animal.Number), report.Animal.Answer, report.Animal.InCalf)
    {
        Tag = Particulars.Tag(report),
        Mob = Particulars.Mob(report),
        Sort = Particulars.Sort(report),
        Says = RowFacts.Of(report, checks),
        Strip = axis is null ? [] : HerdStrip.Of(report, axis),
    };
}
