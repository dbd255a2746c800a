namespace Byrelaw.Records.Tests.Files;

public class BlockBorderTests
{
    private static readonly Gen<string> Row = Gen.OneOf(
        "2026-03-01,1001,heat,,", "2026-03-02,1002,weight,500,kg", "2026-03-01,1003,mob,North,", "2026-03-05,mob:North,mastitis,,",
        "2026-03-02,1001,BVD virus,pending,", "2026-03-02,9999,heat,,", "soon,1001,heat,,", "2026-03-02,1001,heat,\"x\"\"y\",", "2026-03-02,1001,he\"at,,",
        "2026-03-02,1001,heat,\"open,", "on,\",", "two\",", "2026-03-03,1002,heat,\"one\ntwo, three\",", "2026-03-03,1003,heat,,\"\r\n\r\nx\"", "2026-03-03,1001,heat,\"one\n2026-03-04,1002,heat,,\",", "2026-03-02,1001", "2026-03-02,1001,Prüfung,,", "", ",,,,", "2018-01-01,1001,heat,,", "\uFEFF2026-03-02,1001,heat,,");

    private static readonly Gen<string> LineEnd = Gen.OneOf("\n", "\r\n", "\r");

    [Fact]
    public void What_is_read_does_not_depend_on_how_the_file_is_cut_up()
    {
        var files =
            from rows in Gen.Select(Row, LineEnd, (row, end) => row + end).Array[0, 40]
            from size in Gen.Int[16, 200]
            from threads in Gen.Int[1, 3]
            select (Events: "date,animal,kind,value,unit\n" + string.Concat(rows), Size: size, Threads: threads);
        files.Hold(file =>
        {
            var whole = Read.InBlocks(Read.Animals, file.Events, 1 << 20, 1);
            var cut = Read.InBlocks(Read.Animals, file.Events, file.Size, file.Threads);
            Text(cut).ShouldBe(Text(whole));
        });
    }

    [Fact]
    public void A_row_longer_than_a_block_is_read_whole()
    {
        var herd = Read.InBlocks(Read.Animals, "date,animal,kind,note\n2026-03-01,1001,heat," + new string('x', 1000) + "\n2026-03-02,1001,heat,\n", 20);

        Shown.Entries(herd, "1001", Words.Heat).ShouldBe("2026-03-01 (2), 2026-03-02 (3)");
    }

    private static string Text(Herd herd)
    {
        var text = new StringBuilder(Shown.ProblemsAndGaps(herd)).Append(herd.Fingerprint).Append(herd.KnownDay).Append('\n');
        foreach (var number in herd.Numbers)
        {
            text.Append(Shown.Stays(herd, number)).Append(Shown.Membership(herd, number));
            foreach (var kind in herd.Vocabulary.Kinds)
            {
                text.Append(Shown.Entries(herd, number, kind)).Append('|');
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
