namespace Byrelaw.Records.Tests.Animals;

/// <summary>Headings and answers may be written as the rule files call them.</summary>
public sealed class CalledOtherwiseTests
{
    [Fact]
    public void A_heading_a_kind_and_an_answer_are_read_by_the_names_that_a_file_gives_them()
    {
        var words = Rules("use base vocabulary edition 1\ncall parity also lactation\ncall mob also paddock\ncall empty also open\n");
        var herd = HerdReader.Read(
            Encoding.UTF8.GetBytes("animal,born,sex,paddock,lactation\n7,2022-08-05,F,River,3\n"),
            Encoding.UTF8.GetBytes("date,animal,kind,value\n2026-09-01,7,paddock,Hill\n2026-09-02,7,pregnancy test,open\n"), words, null);
        herd.Problems.ShouldBeEmpty();
        herd.Mobs.Names.Order().ShouldBe(["Hill", "River"]);
        herd.RecordedParity[0].ShouldBe(3);
        var test = (TestKind)words.FindKind("pregnancy test")!;
        test.Answers[herd.Runs[test.Id].Answers[0]].ShouldBe("empty");
    }

    private static Vocabulary Rules(string text) => RulebookReader.Read("farm.byre", new OneFile(text))!.Rulebook.Vocabulary;

    private sealed class OneFile(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(text) : null;
    }
}
