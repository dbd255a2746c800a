using Byrelaw.Reporting.Calendar;

namespace Byrelaw.Reporting.Tests.Calendar;

/// <summary>The writer against another reader of RFC 5545, Ical.Net, and against the standard's own limits.</summary>
public sealed class CalendarTextTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    [Fact]
    public void Another_reader_reads_what_was_written() => Gen.Select(Gen.String, Gen.String, Gen.Int[0, 400], Gen.Int[0, 5]).Array[1, 5].Hold(rows =>
    {
        var events = rows.Select((row, i) => new CalendarEvent(
            $"task/{i}", Today.PlusDays(row.Item3), Today.PlusDays(row.Item3 + row.Item4), "T" + Plain(row.Item1), "D" + Plain(row.Item2))).ToList();
        var read = Read(CalendarText.Of("Withy Bend, spring 2026", Today, events));
        read.Count.ShouldBe(events.Count);
        foreach (var entry in events)
        {
            var other = read.Single(one => one.Uid == $"{entry.Id}@Withy Bend, spring 2026");
            (other.Summary, other.Description).ShouldBe((entry.Title, entry.Text));
            LocalDate.FromDateOnly(other.Start!.Date).ShouldBe(entry.From);
            LocalDate.FromDateOnly(other.End!.Date).ShouldBe(entry.To.PlusDays(1));
        }
    }, count: 300);

    [Fact]
    public void No_line_is_longer_than_75_octets_and_no_character_is_cut()
    {
        var text = CalendarText.Of("P", Today, [new("a", Today, Today, string.Concat(Enumerable.Repeat("kühe 🐄, ", 40)), "")]);
        foreach (var line in text.Split("\r\n"))
        {
            Encoding.UTF8.GetByteCount(line).ShouldBeLessThanOrEqualTo(75);
            line.EnumerateRunes().ShouldNotContain(Rune.ReplacementChar);
        }

        text.Replace("\r\n ", "").ShouldContain("SUMMARY:" + string.Concat(Enumerable.Repeat("kühe 🐄\\, ", 40)));
        text.Replace("\r\n", "").ShouldNotContain('\n');
    }

    [Fact]
    public void A_later_plan_moves_entries_and_doubles_none()
    {
        var first = Read(CalendarText.Of("P", Today, [new("transfer/1", Today, Today, "Transfer", "")])).Single();
        var later = Read(CalendarText.Of("P", Today.PlusDays(3), [new("transfer/1", Today.PlusDays(14), Today.PlusDays(14), "Transfer", "")])).Single();
        later.Uid.ShouldBe(first.Uid);
        later.Sequence.ShouldBeGreaterThan(first.Sequence);
    }

    /// <summary>Characters that a text in a rule file can hold, in whole pairs; the other reader takes blanks from the ends.</summary>
    private static string Plain(string text) => string.Concat(text.EnumerateRunes().Where(rune => rune != Rune.ReplacementChar && !Rune.IsControl(rune))).Trim() + ".";

    private static List<ReadEvent> Read(string text) =>
        [.. Ical.Net.Calendar.Load(text)!.Events.Select(one => new ReadEvent(one.Uid!, one.Summary!, one.Description ?? "", one.Sequence, one.Start, one.End))];

    private sealed record ReadEvent(
        string Uid, string Summary, string Description, int Sequence, Ical.Net.DataTypes.CalDateTime? Start, Ical.Net.DataTypes.CalDateTime? End);
}
