namespace Byrelaw.Records.Tests.Results;

public class MeasureTests
{
    [Theory]
    [InlineData("weight,512.5,kg", 512.5)]
    [InlineData("weight,512500,g", 512.5)]
    [InlineData("weight,512.5 kg,", 512.5)]
    [InlineData("weight,512.5kg,", 512.5)]
    [InlineData("weight,0,KG", 0)]
    [InlineData("serum copper,8,umol/L", 8)]
    [InlineData("serum copper,8,µmol/L", 8)]
    [InlineData("serum copper,8,μmol/l", 8)]
    [InlineData("serum copper,0.007,mmol/L", 7)]
    [InlineData("serum copper,0.63546,mg/L", 10)]
    [InlineData("body condition,4.5,", 4.5)]
    [InlineData("body condition,1,", 1)]
    [InlineData("body condition,10,", 10)]
    [InlineData("rectal temperature,-0.5,degC", -0.5)]
    [InlineData("rectal temperature,38.6,°C", 38.6)]
    public void A_value_is_kept_in_the_declared_unit(string cells, double value) => Range(cells).ShouldBe((value, value));

    [Theory]
    [InlineData("serum copper,<3,umol/L")]
    [InlineData("serum copper,< 3,umol/L")]
    [InlineData("serum copper,<0.003,mmol/L")]
    [InlineData("serum copper,<3 umol/L,")]
    public void Below_three_is_from_nothing_to_just_below_three(string cells) => Range(cells).ShouldBe((0, double.BitDecrement(3)));

    [Theory]
    [InlineData("body condition,<3,", 1, 3)]
    [InlineData("body condition,<10,", 1, 10)]
    public void On_a_scale_below_starts_at_the_scales_low_end(string cells, double low, double below) =>
        Range(cells).ShouldBe((low, double.BitDecrement(below)));

    [Theory]
    [InlineData("serum copper,>10,umol/L", 10, double.PositiveInfinity)]
    [InlineData("body condition,>8,", 8, 10)]
    public void Above_ten_is_from_just_above_ten_to_the_end(string cells, double above, double high) =>
        Range(cells).ShouldBe((double.BitIncrement(above), high));

    [Theory]
    [InlineData("serum copper,,")]
    [InlineData("serum copper,pending,")]
    [InlineData("serum copper,PENDING,umol/L")]
    [InlineData("body condition,Pending,")]
    public void A_result_that_is_not_there_yet_may_be_anything(string cells) =>
        Range(cells).ShouldBe((double.NegativeInfinity, double.PositiveInfinity));

    private static (double Low, double High) Range(string cells)
    {
        var herd = Read.Events($"2026-03-01,1001,{cells}");
        herd.Problems.ShouldBeEmpty();
        var run = herd.Runs.Single(run => run.Low.Length > 0);
        return (run.Low.Single(), run.High.Single());
    }
}
