using Byrelaw.Reporting.Lists;

namespace Byrelaw.Reporting.Tests.Lists;

public sealed class RankReasonsTests
{
    [Theory]
    [InlineData("1007", "Settled in milk (2)")]
    [InlineData("1033", "")]
    public void Only_a_preference_that_holds_gives_points(string number, string reasons) =>
        RankReasons.Of(InventedDraft.Animal(InventedDraft.Make(), number).Animal).ShouldBe(reasons);
}
