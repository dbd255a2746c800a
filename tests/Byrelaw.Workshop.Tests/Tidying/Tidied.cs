namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>Tidies what a test writes out.</summary>
internal static class Tidied
{
    /// <summary>The tidied text of a file that can be tidied.</summary>
    public static string Text(string text) => Text(Result(text), text);

    /// <summary>The tidied text of a result that has one.</summary>
    public static string Text(TidyResult result, string about)
    {
        DiagnosticText.Of(result.Errors).ShouldBe("", about);
        result.WouldChange.ShouldBeNull(about);
        return result.Text.ShouldNotBeNull(about);
    }

    /// <summary>Whatever came of one file on its own.</summary>
    public static TidyResult Result(string text) => Tidier.Tidy("farm.byre", new RuleFilesInMemory().Add("farm.byre", text))!;

    /// <summary>The comments of a text, in order, without spaces at their ends.</summary>
    public static string[] Comments(string text) =>
        [.. Lexer.Lex(new SourceFile("farm.byre", text)).Comments.Select(comment => comment.Text.TrimEnd())];
}
