namespace Byrelaw.Reporting.Tests.Files;

public sealed class FileNamesTests
{
    [Fact]
    public void Ordinary_numbers_name_their_files() => new FileNames().For("1423").ShouldBe("1423");

    [Fact]
    public void Names_are_safe_and_no_two_alike() =>
        Gen.OneOf(Gen.String, Gen.OneOf("con", "NUL.txt", "com1", "..", "../../x", "", " ", ".", "a/b", "a\\b", "A/b", "b7", "B7", "index", new string('x', 300), new string('x', 301), "é", "e", "\uD800", "\uD801", "-"))
            .List[0, 30].Hold(names =>
            {
                var files = new FileNames();
                var distinct = names.Distinct(StringComparer.Ordinal).ToList();
                var given = distinct.Select(files.For).ToList();
                given.Distinct(StringComparer.OrdinalIgnoreCase).Count().ShouldBe(given.Count);
                given.ShouldAllBe(file => file.Length > 0 && file.Length <= 64 && file.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') && file[0] != '-');
                given.ShouldAllBe(file => !IsReserved(file));
                distinct.Select(files.For).ShouldBe(given);
            });

    /// <summary>Source: Microsoft, "Naming Files, Paths, and Namespaces".</summary>
    private static bool IsReserved(string name) =>
        System.Text.RegularExpressions.Regex.IsMatch(name, "^(con|prn|aux|nul|com[0-9]|lpt[0-9])$", System.Text.RegularExpressions.RegexOptions.IgnoreCase);
}
