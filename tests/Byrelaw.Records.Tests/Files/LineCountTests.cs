namespace Byrelaw.Records.Tests.Files;

public class LineCountTests
{
    [Fact]
    public void Line_ends_are_counted_as_a_person_counts_them() => Gen.String[Gen.Char["\r\nab"], 0, 200].Hold(text =>
        LineCount.Of(Encoding.UTF8.GetBytes(text)).ShouldBe(text.Replace("\r\n", "\n").Replace('\r', '\n').Count(c => c == '\n')));
}
