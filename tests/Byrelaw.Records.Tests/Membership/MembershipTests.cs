namespace Byrelaw.Records.Tests.Membership;

public class MembershipTests
{
    private static string Of(string animal, params string[] rows) => Shown.Membership(Read.Events(rows), animal);

    [Fact]
    public void An_animal_born_here_is_in_from_birth() =>
        Of("1001").ShouldBe("Out from start (0); In from 2019-08-12 (0)");

    [Fact]
    public void Whether_she_is_born_yet_is_not_known_in_the_month_of_her_birth() =>
        Of("1003", "2026-01-01,1001,heat,,").ShouldBe("Out from start (0); NotKnown from 2021-08-01 (0); In from 2021-08-31 (0)");

    [Fact]
    public void An_event_shows_that_she_is_born() =>
        Of("1003", "2021-08-10,1003,sale,,").ShouldBe("Out from start (0); NotKnown from 2021-08-01 (0); Out from 2021-08-10 (2)");

    [Fact]
    public void An_animal_without_a_birth_date_is_in_always() => Of("1004").ShouldBe("In from start (0)");

    [Fact]
    public void A_bought_animal_is_in_from_the_day_she_joins() =>
        Of("1001", "2024-05-01,1001,purchase,,").ShouldBe("Out from start (0); In from 2024-05-01 (2)");

    [Fact]
    public void On_the_day_she_leaves_she_is_out() =>
        Of("1001", "2024-05-01,1001,sale,,").ShouldBe("Out from start (0); In from 2019-08-12 (0); Out from 2024-05-01 (2)");

    [Fact]
    public void Sold_and_bought_back() =>
        Of("1001", "2024-05-01,1001,sale,,", "2025-05-01,1001,purchase,,", "2026-01-01,1001,death,,")
            .ShouldBe("Out from start (0); In from 2019-08-12 (0); Out from 2024-05-01 (2); In from 2025-05-01 (3); Out from 2026-01-01 (4)");

    [Fact]
    public void Out_and_in_again_on_one_day_leaves_it_open_where_she_is() =>
        Of("1001", "2024-01-01,1001,purchase,,", "2024-05-01,1001,sale,,", "2024-05-01,1001,purchase,,")
            .ShouldBe("Out from start (0); In from 2024-01-01 (2); NotKnown from 2024-05-01 (3)");

    [Fact]
    public void A_leaving_that_cannot_be_read_makes_her_presence_not_known_from_that_day() =>
        Of("1001", "2024-05-01,1001,sale,dear,").ShouldBe("Out from start (0); In from 2019-08-12 (0); NotKnown from 2024-05-01 (2)");

    [Fact]
    public void A_later_row_that_can_be_read_settles_it() =>
        Of("1001", "2024-05-01,1001,sale,dear,", "2025-05-01,1001,death,,")
            .ShouldBe("Out from start (0); In from 2019-08-12 (0); NotKnown from 2024-05-01 (2); Out from 2025-05-01 (3)");

    [Fact]
    public void A_joining_that_cannot_be_read_leaves_open_whether_she_was_there_before() =>
        Of("1001", "2024-05-01,1001,purchase,dear,").ShouldBe("Out from start (0); NotKnown from 2019-08-12 (0)");

    [Fact]
    public void A_row_of_an_unreadable_kind_may_have_been_a_joining_or_a_leaving() =>
        Of("1001", "2024-05-01,1001,foot trim,,").ShouldBe("Out from start (0); NotKnown from 2019-08-12 (0)");

    [Fact]
    public void A_leaving_of_an_unknown_animal_may_have_been_anyones()
    {
        var herd = Read.Events("2024-05-01,9999,sale,,", "2025-01-01,1002,purchase,,");

        Shown.Membership(herd, "1001").ShouldBe("Out from start (0); In from 2019-08-12 (0); NotKnown from 2024-05-01 (2)");
        Shown.Membership(herd, "1002").ShouldBe(
            "Out from start (0); NotKnown from 2020-07-30 (0); In from 2025-01-01 (3)",
            "if it was not hers, the first thing on record is that she was bought");
    }

    [Fact]
    public void A_leaving_that_cannot_be_read_before_a_joining_leaves_open_whether_she_was_there_before() =>
        Of("1001", "2024-05-01,1001,sale,dear,", "2025-05-01,1001,purchase,,")
            .ShouldBe("Out from start (0); NotKnown from 2019-08-12 (0); In from 2025-05-01 (3)");

    [Fact]
    public void A_leaving_on_an_unreadable_day_makes_her_presence_not_known_from_birth() =>
        Of("1001", "May 2024,1001,sale,,").ShouldBe("Out from start (0); NotKnown from 2019-08-12 (2)");

    [Fact]
    public void What_happened_to_others_before_her_birth_says_nothing_about_her() =>
        Of("1002", "2020-01-01,9999,sale,,", "2026-01-01,1001,heat,,").ShouldBe("Out from start (0); In from 2020-07-30 (0)");
}
