namespace Byrelaw.Records.Tests.Documents;

public sealed class RecordsPageTests
{
    [Fact]
    public void Every_example_of_the_page_is_read_as_the_page_says()
    {
        var vocabulary = BaseWords.Vocabulary;
        var animals = "";
        var herds = new List<Herd>();
        var stated = 0;

        ExecutedPage.Verify("docs/records.md", fence =>
        {
            switch (fence.Language, fence.Rest)
            {
                case ("csv", "animals"):
                    animals = fence.Text;
                    return null;
                case ("csv", "events"):
                    herds.Add(HerdReader.Read(Support.Read.Bytes(animals), Support.Read.Bytes(fence.Text), vocabulary, null));
                    return null;
                case ("problems", _):
                    stated++;
                    return DiagnosticText.Of(herds[^1].Problems).TrimEnd('\n') + "\n";
                case ("doubts", _):
                    return Shown.Gaps(herds[^1]);
                default:
                    return null;
            }
        });

        herds.Count.ShouldBe(2);
        herds[0].Problems.ShouldBeEmpty();
        stated.ShouldBe(1);
    }
}
