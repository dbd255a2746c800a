namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>
/// A page is A4 upright, 210 by 297 mm (ISO 216). In 9-point letters that are all 0.6 of that wide, 100 columns take 540 points
/// (190.5 mm), which leaves 9 mm at the sides; lines 10.5 points apart, 74 of them (274 mm), leave 11 mm above and below.
/// A longer line takes as many lines as it needs.
/// </summary>
public sealed class PrintedPagesTests
{
    private const int Columns = 100;
    private const int LinesOfAPage = 74;

    [Fact]
    public void The_base_rules_for_recipients_fit_three_printed_pages()
    {
        var printed = Tidier.Tidy(Repository.At("rulesets/recipients.byre"), new DiskFiles())!.Text!.TrimEnd('\n').Split('\n');

        printed.Sum(line => Math.Max(1, (line.Length + Columns - 1) / Columns)).ShouldBeLessThanOrEqualTo(3 * LinesOfAPage);
    }
}
