using System.Globalization;
using Byrelaw.Records.Cells;
using NodaTime;

namespace Byrelaw.Records.Tests.Cells;

public class CellTests
{
    [Fact]
    public void Day_numbers_are_those_of_a_calendar_library() => Gen.Int[1900, 9998].Select(Gen.Int[1, 12], Gen.Int[1, 31]).Hold((year, month, day) =>
    {
        var exists = day <= CalendarSystem.Iso.GetDaysInMonth(year, month);
        CivilDate.Exists(year, month, day).ShouldBe(exists);
        if (exists)
        {
            CivilDate.DayNumber(year, month, day).ShouldBe(Records.Herds.Day.Number(new LocalDate(year, month, day)));
        }
    });

    [Fact]
    public void Numbers_are_read_to_the_nearest_double() => Gen.String[Gen.Char["0123456789.-"], 1, 24].Hold(text =>
    {
        var isPlain = System.Text.RegularExpressions.Regex.IsMatch(text, @"^-?[0-9]+(\.[0-9]+)?$");
        NumberCell.TryRead(Encoding.UTF8.GetBytes(text), out var number).ShouldBe(isPlain);
        if (isPlain)
        {
            number.ShouldBe(double.Parse(text, CultureInfo.InvariantCulture));
        }
    });

    [Theory]
    [InlineData("1e3")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("+1")]
    [InlineData(".5")]
    [InlineData("5.")]
    [InlineData("1 000")]
    [InlineData("٣")]
    [InlineData("")]
    public void Other_ways_to_write_numbers_are_not_read(string text) => NumberCell.TryRead(Encoding.UTF8.GetBytes(text), out _).ShouldBeFalse();

    // ISO 11784: 38 bits for the animal's number, so at most 2^38 - 1 = 274,877,906,943; ICAR: 999 is kept for tests, 000 is no code.
    [Theory]
    [InlineData("982000412345678", IdentityFlaw.None)]
    [InlineData("554274877906943", IdentityFlaw.None)]
    [InlineData("554274877906944", IdentityFlaw.TooLarge)]
    [InlineData("999000000000001", IdentityFlaw.TestCode)]
    [InlineData("000000000000001", IdentityFlaw.NoCode)]
    internal void Fifteen_digits_are_held_to_the_standard(string identity, IdentityFlaw flaw)
    {
        Iso11784.Concerns(identity).ShouldBeTrue();
        Iso11784.Flaw(identity).ShouldBe(flaw);
    }

    [Theory]
    [InlineData("UK 123456 700123")]
    [InlineData("98200041234567")]
    [InlineData("98200041234567X")]
    public void Other_texts_are_not_the_standards_business(string identity) => Iso11784.Concerns(identity).ShouldBeFalse();
}
