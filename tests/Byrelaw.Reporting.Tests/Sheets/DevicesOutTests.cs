using Byrelaw.Language.Rulebooks.Plans;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Tests.Sheets;

/// <summary>The foot of a morning's sheet says on which day what went in comes out, for each method where they differ.</summary>
public sealed class DevicesOutTests
{
    private static readonly LocalDate Morning = new(2026, 10, 4);

    [Fact]
    public void Devices_of_two_methods_come_out_on_the_day_of_each()
    {
        HormonePart.ComesOut(Sheet(("Insert", 7), ("Insert", 7))).ShouldBe("Sunday 11 October 2026: out comes all that went in.");
        HormonePart.ComesOut(Sheet(("Long insert", 9), ("Insert", 7), ("Other insert", 7))).ShouldBe("Sunday 11 October 2026: out comes what went in for Insert and Other insert. Tuesday 13 October 2026: out comes what went in for Long insert.");
        HormonePart.ComesOut(Sheet()).ShouldBe("");
    }

    private static HormoneSheet Sheet(params (string Name, int Out)[] methods) => new(Morning, null!, null!, null)
    {
        Rows =
        [
            .. methods.Select(method => new Method
            {
                Name = method.Name,
                Span = default,
                Steps = [new MethodStep(0, null, "Put it in", null, [], default) { Device = DeviceMove.In }, new MethodStep(method.Out, null, "Take it out", null, [], default) { Device = DeviceMove.Out }],
            }).Select(method => new HormoneRow(new SheetAnimal(0, "7", null), method, Morning, 0, [method.Steps[0]])),
        ],
    };
}
