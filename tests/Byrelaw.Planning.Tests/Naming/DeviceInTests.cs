using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.Naming;

/// <summary>Devices that are in and not out, by the book.</summary>
public sealed class DeviceInTests
{
    [Theory]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in")]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,,")]
    [InlineData(true, "2026-07-01,1,hormone given,,,,,,in")]
    [InlineData(false, "2026-07-01,1,hormone given,,,Prostaglandin once,,,")]
    [InlineData(false, "2026-07-01,1,hormone given,,,,,,")]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,yes?")]
    [InlineData(false, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-08,1,hormone given,,,Progesterone insert,1,7,out")]
    [InlineData(false, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-08,1,hormone given,,,Progesterone insert,,,")]
    [InlineData(false, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-05,1,hormone given,,,,,,gone")]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-08,1,hormone given,,,Progesterone insert,1,7,in")]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-08,1,hormone given,,,,,,")]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-08,1,hormone given,,,Progesterone insert,1,seven,")]
    [InlineData(true, "2026-07-01,1,hormone given,,,Progesterone insert,1,0,in", "2026-07-01,1,hormone given,,,,,,out")]
    public void It_is_in_until_something_says_that_it_is_out_or_gone(bool isIn, params string[] rows)
    {
        var farm = new WrittenPlan
        {
            More = "event hormone given  marks treatment, with method is text, with session is number, with step is number, with device is one of \"in\", out, gone\n",
            Columns = "date,animal,kind,value,unit,method,session,step,device",
            Events = [.. rows],
        };
        var rulebook = farm.Rulebook;
        DeviceIn.Of(farm.Herd(rulebook), rulebook.Plans).Length.ShouldBe(isIn ? 1 : 0);
    }
}
