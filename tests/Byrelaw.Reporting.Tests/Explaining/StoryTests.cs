using Byrelaw.Reporting.Explaining;
using NodaTime.Text;

namespace Byrelaw.Reporting.Tests.Explaining;

public sealed class StoryTests
{
    [Theory]
    [InlineData("2026-09-07", "calved 7 Sep")]
    [InlineData("2026-09-06", "born 10 Aug 2021")]
    public void Her_story_ends_with_the_last_judging_day(string day, string begins)
    {
        // She calved on 7 September.
        var draft = InventedDraft.Make();
        var list = draft.Lists[0];
        var judged = LocalDatePattern.Iso.Parse(day).Value;
        list = list with { Choice = list.Choice with { JudgedFrom = judged, JudgedTo = judged } };
        Story.Of(InventedDraft.Animal(draft with { Lists = [list] }, "1423"))[0].ShouldBe(begins);
    }
}
