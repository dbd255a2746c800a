using System.Text;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Lexing;
using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Reading;

/// <summary>Turns bytes into lines. Bytes that are not UTF-8 are one problem, and no lines.</summary>
internal static class FileDecoding
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Decodes and lexes.</summary>
    public static RuleFile Decode(string shown, byte[] bytes, bool isRoot)
    {
        try
        {
            var source = new SourceFile(shown, Strict.GetString(bytes));
            return new RuleFile(source) { IsRoot = isRoot, Lines = LineSplitter.Split(Lexer.Lex(source)) };
        }
        catch (DecoderFallbackException)
        {
            var source = new SourceFile(shown, Encoding.UTF8.GetString(bytes));
            var file = new RuleFile(source) { IsRoot = isRoot };
            var at = Math.Max(0, source.Text.IndexOf('\uFFFD', StringComparison.Ordinal));
            file.Problems.Add(FileProblems.NotUtf8(new SourceSpan(source, at, 1), bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..]));
            return file;
        }
    }
}
