using System.Xml.Linq;

namespace Byrelaw.Reporting.Tests.Pages;

public sealed class TimelinePictureTests
{
    private static readonly AnimalReport Report = InventedDraft.Animal(InventedDraft.Make(), "1423");

    [Fact]
    public void Bars_fill_the_whole_width_without_holes_or_overlaps() => Gen.Select(Gen.Int[1, 60], Gen.Int[0, 2], Gen.Bool).List[1, 12].Hold(steps =>
    {
        var from = new LocalDate(2026, 9, 20);
        var stretches = new List<Stretch>();
        foreach (var (days, truth, expected) in steps)
        {
            stretches.Add(new Stretch(from, (Truth)truth, expected));
            from = from.PlusDays(days);
        }

        var timeline = new Timeline([.. stretches], from.PlusDays(-1));
        var svg = Picture(Report with { Animal = Report.Animal with { Timeline = timeline, Rules = [] } });
        var bars = svg.Elements("rect").Where(rect => rect.Attribute("class") is null).ToList();
        bars.Count.ShouldBe(stretches.Count);
        var end = 0.0;
        foreach (var bar in bars)
        {
            Number(bar, "x").ShouldBe(end, 0.01);
            end = Number(bar, "x") + Number(bar, "width");
        }

        end.ShouldBe(100, 0.01);
    });

    [Fact]
    public void Answers_differ_by_pattern_and_no_colour_is_named()
    {
        var svg = Picture(Report);
        svg.Descendants().Attributes("fill").Select(fill => fill.Value).Distinct().Order(StringComparer.Ordinal).ShouldBe(["currentColor", "none", "url(#not-known)", "url(#yes-if)"]);
        svg.Descendants("pattern").Attributes("id").Select(id => id.Value).ShouldBe(["yes-if", "not-known"]);
    }

    [Fact]
    public void The_judging_days_and_the_day_the_records_end_are_marked()
    {
        var svg = Picture(Report);
        svg.Descendants("line").Count(line => line.Attribute("class")!.Value == "judged").ShouldBe(2);
        svg.Descendants("line").Count(line => line.Attribute("class")!.Value == "known").ShouldBe(1);
        svg.Descendants("text").Select(text => text.Value).ShouldContain("records end 20 Sep");
        svg.Descendants("text").Select(text => text.Value).ShouldContain("judged 20 Oct to 21 Oct");
    }

    private static XElement Picture(AnimalReport report) => HtmlTree.Parse(TimelinePicture.Of(report)).Element("svg")!;

    private static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value.TrimEnd('%'), CultureInfo.InvariantCulture);
}
