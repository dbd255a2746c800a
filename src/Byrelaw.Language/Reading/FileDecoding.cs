namespace Byrelaw.Language.Reading;

/// <summary>Turns bytes into lines. Bytes that are not UTF-8 are one problem, and no lines.</summary>
internal static class FileDecoding
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private const int MostBytes = 2_000_000;

    /// <summary>Decodes and lexes.</summary>
    public static RuleFile Decode(string shown, byte[] bytes, bool isRoot)
    {
        if (bytes.Length > MostBytes)
        {
            return Refused(shown, "", isRoot, at => FileProblems.TooLong(at, MostBytes));
        }

        try
        {
            var source = new SourceFile(shown, Strict.GetString(bytes));
            return new RuleFile(source) { IsRoot = isRoot, Lines = LineSplitter.Split(Lexer.Lex(source)) };
        }
        catch (DecoderFallbackException)
        {
            var looksLikeUtf16 = bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..];
            return Refused(shown, Encoding.UTF8.GetString(bytes), isRoot, at => FileProblems.NotUtf8(at, looksLikeUtf16));
        }
    }

    /// <summary>A file without lines, with its one problem at the first character that could not be read.</summary>
    private static RuleFile Refused(string shown, string text, bool isRoot, Func<SourceSpan, Diagnostic> problem)
    {
        var file = new RuleFile(new SourceFile(shown, text)) { IsRoot = isRoot };
        var at = Math.Max(0, file.Source.Text.IndexOf('\uFFFD', StringComparison.Ordinal));
        file.Problems.Add(problem(new SourceSpan(file.Source, at, 0)));
        return file;
    }
}
