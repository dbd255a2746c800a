namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>A comment stays with the statement that it precedes or follows.</summary>
public sealed class CommentTests
{
    private const string Words = "event heat\nevent mastitis\n\nrules for cows to watch\n\n";

    [Fact]
    public void A_comment_beside_a_line_stays_beside_it() => Rule(
        "rule \"A\"# the first\n needs   no heat ever   #never\n because \"x\"#why",
        """
        rule "A"  # the first
          needs no heat ever  #never
          because "x"  #why
        """);

    [Fact]
    public void A_comment_above_a_line_goes_where_the_line_goes() => Rule(
        """
        # about A
        rule "A"
        # why
          because "x"
          needs no heat ever
        """,
        """
        # about A
        rule "A"
          needs no heat ever
          # why
          because "x"
        """);

    [Fact]
    public void Lines_stay_in_their_order_where_the_order_of_comments_would_change() => Rule(
        """
        rule "A"
          because "x"  # first
          needs no heat ever  # second
        """,
        """
        rule "A"
          because "x"  # first
          needs no heat ever  # second
        """);

    [Fact]
    public void Comments_in_a_list_stay_before_their_bullets() => Rule(
        """
        rule "A"
          needs any of # one is enough
          # the usual one
          - no heat ever
                # the other
          -   no mastitis ever # rare
          # reasons
          because "x"
        """,
        """
        rule "A"
          needs any of  # one is enough
            # the usual one
            - no heat ever
            # the other
            - no mastitis ever  # rare
          # reasons
          because "x"
        """);

    [Fact]
    public void Comments_between_the_texts_of_a_reason_keep_the_texts_apart() => Rule(
        """
        rule "A"
          needs no heat ever
          because "one," "two," # counted
             # and
            "three"   # done
        """,
        """
        rule "A"
          needs no heat ever
          because "one,"
                  "two,"  # counted
                  # and
                  "three"  # done
        """);

    [Fact]
    public void An_indented_comment_at_a_blocks_end_belongs_to_the_block() => Rule(
        """
        rule "A"
          needs no heat ever
          because "x"
            # ask the vet again
        rule "B"
          needs no heat ever
          because "x"
        """,
        """
        rule "A"
          needs no heat ever
          because "x"
          # ask the vet again

        rule "B"
          needs no heat ever
          because "x"
        """);

    [Fact]
    public void A_comment_that_stands_against_the_next_head_belongs_to_that() => Rule(
        """
        rule "A"
          needs no heat ever
          because "x"

            # about B
        rule "B"
          needs no heat ever
          because "x"
        # about C
        rule "C"
          needs no heat ever
          because "x"
        """,
        """
        rule "A"
          needs no heat ever
          because "x"

        # about B
        rule "B"
          needs no heat ever
          because "x"

        # about C
        rule "C"
          needs no heat ever
          because "x"
        """);

    [Fact]
    public void A_title_between_rules_keeps_one_empty_line_above_and_below() => Rule(
        """
        rule "A"
          needs no heat ever
          because "x"



        # Illness



        rule "B"
          needs no heat ever
          because "x"
        """,
        """
        rule "A"
          needs no heat ever
          because "x"

        # Illness

        rule "B"
          needs no heat ever
          because "x"
        """);

    [Fact]
    public void Comments_alone_are_a_file_too() => Tidied.Text("\n\n  # one \n\n\n# two\n\n").ShouldBe("# one\n\n# two\n");

    [Fact]
    public void Comments_at_the_end_of_the_file_stay_there() => Rule(
        "rule \"A\"\n  needs no heat ever\n  because \"x\"\n  # to do\n\n\n# the end",
        """
        rule "A"
          needs no heat ever
          because "x"
          # to do

        # the end
        """);

    private static void Rule(string written, string tidied) =>
        Tidied.Text(Words + written).ShouldBe(Words + tidied.ReplaceLineEndings("\n") + "\n");
}
