using System.IO.Compression;
using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>No file ends the program, and none is cut short in silence.</summary>
public sealed class BoundsTests
{
    private const string Farm = """
        event mating

        records
          up to 2026-09-30
          complete for mating since 2026-01-01
          from "cows.csv", a row for each animal
            animal in "No"
          from "diary.csv", a row for each event
            date in "Day"
            animal in "No"
            kind in "What"
        """;

    [Theory]
    [InlineData(4096, "")]
    [InlineData(4097, "R0306")]
    public void So_many_columns_are_read(int columns, string code)
    {
        var herd = Read($"Day,No,What{string.Concat(Enumerable.Range(4, columns - 3).Select(column => $",c{column}"))}\n2026-05-01,1,mating{new string(',', columns - 3)}\n");

        herd.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Code).ShouldBe(code.Length == 0 ? [] : [code]);
        IsCovered(herd).ShouldBe(code.Length == 0);
    }

    [Fact]
    public void A_row_or_a_cell_beyond_bounds_may_have_said_anything()
    {
        var row = Read("Day,No,What\n2026-05-01,1," + new string('x', 1 << 21) + "\n2026-05-02,1,mating\n");
        row.Problems.ShouldHaveSingleItem().Message.ShouldStartWith("this row is longer than 1 MB");
        row.Problems[0].LineText.Length.ShouldBeLessThan(1000);
        IsCovered(row).ShouldBeFalse();

        var cell = Read("Day,No,What\n2026-05-01,1," + new string('x', 70_000) + "\n");
        cell.Problems.ShouldHaveSingleItem().Message.ShouldStartWith("a cell of this row is longer than 64 kB");
        IsCovered(cell).ShouldBeFalse();
        Read("Day,No,What\n").Problems.ShouldBeEmpty();
        Read(new string('x', 1 << 21) + "\n").Problems.ShouldHaveSingleItem().Code.ShouldBe("R0306");
    }

    [Fact]
    public void What_is_packed_is_counted_as_it_is_unpacked()
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(new byte[5000]);
        }

        SourceText.Of(packed.ToArray(), null, 4999, out var isTooLarge).ShouldBeNull();
        isTooLarge.ShouldBeTrue();
        SourceText.Of(packed.ToArray(), null, 5000, out isTooLarge).ShouldNotBeNull();
        isTooLarge.ShouldBeFalse();
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(30)]
    [InlineData(10_000)]
    public void A_packed_file_that_breaks_off_is_not_there(int cut)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(Encoding.UTF8.GetBytes("Day,No,What\n" + string.Concat(Enumerable.Range(0, 9000).Select(row => $"2026-05-01,{row * 7919 % 10007},mating\n"))));
        }

        var whole = packed.ToArray();
        var herd = FarmFiles.Herd(Farm, [("cows.csv", "No\n1\n"u8.ToArray()), ("diary.csv", whole[..^Math.Min(cut, whole.Length - 20)])]);
        herd.Problems.ShouldHaveSingleItem().Code.ShouldBe("R0302");
        IsCovered(herd).ShouldBeFalse();
    }

    [Fact]
    public void A_packed_file_in_a_packed_file_is_no_text_and_a_mark_at_its_start_is_no_heading()
    {
        var once = Packed(Encoding.UTF8.GetBytes("Day,No,What\n2026-05-01,1,mating\n"));
        FarmFiles.Herd(Farm, [("cows.csv", "No\n1\n"u8.ToArray()), ("diary.csv", once)]).Problems.ShouldBeEmpty();
        FarmFiles.Herd(Farm, [("cows.csv", "No\n1\n"u8.ToArray()), ("diary.csv", Packed(once))]).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0302");
        FarmFiles.Herd(Farm, [("cows.csv", [.. Packed("No\n"u8.ToArray()), .. Packed("1\n"u8.ToArray()), 0, 0, 0]), ("diary.csv", once)]).Numbers.ShouldBe(["1"], "several packed files, one behind the other");
        FarmFiles.Herd(Farm, [("cows.csv", "No\n1\n"u8.ToArray()), ("diary.csv", [.. once, .. once[..^3]])]).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0302", "the second of them breaks off");
        FarmFiles.Herd(Farm, [("cows.csv", [0xEF, 0xBB, 0xBF, .. "No\n1\n"u8]), ("diary.csv", Packed([0xEF, 0xBB, 0xBF, .. "Day,No,What\n2026-05-01,1,mating\n"u8]))]).Problems.ShouldBeEmpty();
        FarmFiles.Herd(Farm, [("cows.csv", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("No\n1\n")]), ("diary.csv", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes("Day,No,What\n2026-05-01,1,mating\n")])]).Problems.ShouldBeEmpty();
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }

    private static bool IsCovered(Herd herd)
    {
        var day = Day.Number(Words.Date("2026-08-01"));
        return herd.Coverage.Covers(herd.Find("1"), herd.Vocabulary.FindKind("mating")!.Id, day, day, strict: true);
    }

    private static Herd Read(string diary) => FarmFiles.Herd(Farm, [("cows.csv", "No\n1\n"), ("diary.csv", diary)]);
}
