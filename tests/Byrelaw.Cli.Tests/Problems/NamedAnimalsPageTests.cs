namespace Byrelaw.Cli.Tests.Problems;

/// <summary>The page about animals that are named says what <c>draft</c> says: of a wrong programme its problem, of a mended one none.</summary>
public sealed class NamedAnimalsPageTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void The_page_says_what_the_program_says()
    {
        var (told, mended) = (0, 0);
        foreach (var page in ProblemPages.OfJudging)
        {
            var isMended = false;
            ExecutedPage.Verify(ProblemPages.Folder + page, fence =>
            {
                if (fence.Language == "problems")
                {
                    (told, isMended) = (told + 1, true);
                    var said = Problems();
                    said.ShouldContain(" J010");
                    return said;
                }

                _farm.Write("spring.byre", fence.Text);
                if (isMended)
                {
                    Problems().ShouldBe("");
                    (mended, isMended) = (mended + 1, false);
                }

                return null;
            });
        }

        told.ShouldBe(3);
        mended.ShouldBe(told);
    }

    /// <summary>What stands above the closing count.</summary>
    private string Problems() => _farm.Run("draft", "spring.byre", "--out", "out").Err.Split("\n\n")[0].TrimEnd('\n') is { Length: > 0 } said ? said + "\n" : "";
}
