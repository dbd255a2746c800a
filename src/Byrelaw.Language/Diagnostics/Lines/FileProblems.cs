namespace Byrelaw.Language.Diagnostics;

/// <summary>Files that cannot be read, and what they may not hold.</summary>
internal static class FileProblems
{
    public static Diagnostic NotUtf8(SourceSpan at, bool looksLikeUtf16) => Problem.Error(
        "B0001", at, looksLikeUtf16 ? "this file is written in UTF-16" : "this file is not written in UTF-8", "rule files are UTF-8",
        "save it anew with the encoding UTF-8");

    public static Diagnostic Missing(SourceSpan at, string path) => Problem.Error(
        "B0002", at, $"there is no file {Quoted.Of(path)}", "a path is relative to the file it stands in");

    public static Diagnostic Circle(SourceSpan at, string path) => Problem.Error(
        "B0003", at, $"{Quoted.Of(path)} uses this file in turn", "files that use each other in a circle have no order",
        "move what both need into a third file");

    public static Diagnostic NotRelative(SourceSpan at) => Problem.Error(
        "B0004", at, $"{Quoted.Of(at)} is not a relative path", "a path is relative to the file it stands in, such as `\"../vocabulary.byre\"`");

    public static Diagnostic Backslash(SourceSpan at, string path) => Problem.Error(
        "B0005", at, $"{Quoted.Of(path)} holds a backslash", "folders are parted by `/`", $"write `\"{path.Replace('\\', '/')}\"`")
        .Or(new Proposal(at, $"\"{path.Replace('\\', '/')}\""));

    public static Diagnostic TooMany(SourceSpan at, int most) => Problem.Error(
        "B0006", at, "this is one file too many", $"a rulebook has at most {most}");

    public static Diagnostic TooLong(SourceSpan at, int most) => Problem.Error(
        "B0008", at, "this file is too long for a rule file", $"at most {most} bytes", "is it a file of records?");

    public static Diagnostic UsedFileHolds(SourceSpan at, string what) => Problem.Error(
        "B0007", at, $"a used file holds `{what}`", "only the farm's own file does", "move it there, or read this file on its own");
}
