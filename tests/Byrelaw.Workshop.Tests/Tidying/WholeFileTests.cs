namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>Every kind of line, as it is printed.</summary>
public sealed class WholeFileTests
{
    [Fact]
    public void Every_kind_of_line_is_printed_the_one_way()
    {
        var written = Rules.Words + Snippets.Everything;
        var tidied = Tidied.Text(written);

        Snapshot.Verify(tidied, extension: "byre");
        Tidied.Text(Mangled.Spaces(written, new Random(1))).ShouldBe(tidied);
    }
}
