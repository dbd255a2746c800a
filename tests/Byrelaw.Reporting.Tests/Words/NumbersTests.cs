namespace Byrelaw.Reporting.Tests.Words;

public sealed class NumbersTests
{
    [Fact]
    public void One_cow_and_two_cows()
    {
        Numbers.Count(0, "cow", "cows").ShouldBe("no cows");
        Numbers.Count(1, "cow", "cows").ShouldBe("1 cow");
        Numbers.Count(2, "cow", "cows").ShouldBe("2 cows");
        new[] { 0, 1, 2, 3 }.Select(Numbers.Times).ShouldBe(["never", "once", "twice", "3 times"]);
    }

    [Fact]
    public void Rounding_never_hides_on_which_side_of_a_limit_a_number_lies()
    {
        Numbers.Beside(94.99996, 95).ShouldBe("94.99996");
        Numbers.Beside(95, 95).ShouldBe("95");
        Numbers.Beside(95.333333333, 95).ShouldBe("95.333");
    }

    [Fact]
    public void Lists_are_joined_as_they_are_said()
    {
        Phrases.And([]).ShouldBe("");
        Phrases.And(["a"]).ShouldBe("a");
        Phrases.And(["a", "b"]).ShouldBe("a and b");
        Phrases.Or(["a", "b", "c"]).ShouldBe("a, b or c");
        Phrases.FirstOf(["1", "2", "3"], 2).ShouldBe("1, 2 and 1 more");
        Phrases.Small("BVD virus").ShouldBe("BVD virus");
        Phrases.Small("Cow").ShouldBe("cow");
        Phrases.Stop("Enough?").ShouldBe("Enough?");
        Phrases.Stop("enough").ShouldBe("enough.");
    }
}
