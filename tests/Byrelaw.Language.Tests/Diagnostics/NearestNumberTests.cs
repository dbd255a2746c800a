namespace Byrelaw.Cli.Tests;

public sealed class NearestNumberTests
{
    private static readonly string[] Numbers = ["1007", "1012", "1423", "B7", "B12"];

    [Theory]
    [InlineData("1432", "1423")]
    [InlineData("1424", "1423")]
    [InlineData("107", "1007")]
    [InlineData("b7", "B7")]
    [InlineData("10012", "1012")]
    public void A_slip_of_the_finger_finds_its_number(string asked, string meant) => NearestName.To(asked, Numbers).ShouldBe(meant);

    [Theory]
    [InlineData("9999")]
    [InlineData("Daisy")]
    [InlineData("")]
    public void What_is_far_from_every_number_finds_none(string asked) => NearestName.To(asked, Numbers).ShouldBeNull();
}
