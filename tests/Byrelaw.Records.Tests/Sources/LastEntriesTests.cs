using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>A sheet that holds the last of something covers each animal from her last entry to the day of which it is true, and never before.</summary>
public sealed class LastEntriesTests
{
    private const string Sheet = "No,Calved,Served,PD,Scanned\n1,2026-08-02,2026-09-01,E,2026-08-20\n2,2026-08-11,,,\n3,,,,\n4,2026-08-1?,,P,\n";

    [Fact]
    public void She_is_covered_from_her_last_entry_to_the_sheets_day()
    {
        var herd = Herd("last calving in \"Calved\"\n    last mating in \"Served\", blank is none since last calving\n    last pregnancy test in \"PD\", dated in \"Scanned\"\n      - \"E\" is empty\n      - \"P\" is pregnant");

        Covered(herd, "1", "calving").ShouldBe("2026-08-02 to 2026-09-25");
        Covered(herd, "1", "mating").ShouldBe("2026-09-01 to 2026-09-25");
        Covered(herd, "1", "pregnancy test").ShouldBe("2026-08-20 to 2026-09-25");
        Covered(herd, "2", "calving").ShouldBe("2026-08-11 to 2026-09-25");
        Covered(herd, "2", "mating").ShouldBe("2026-08-11 to 2026-09-25", "none since she calved");
        Covered(herd, "2", "pregnancy test").ShouldBe("", "a blank cell says nothing");
        Covered(herd, "3", "calving").ShouldBe("");
        Covered(herd, "3", "mating").ShouldBe("", "since which calving?");
        Covered(herd, "4", "calving").ShouldBe("", "the day cannot be read");
        Covered(herd, "4", "mating").ShouldBe("");
        Covered(herd, "4", "pregnancy test").ShouldBe("", "a result without a day");
        herd.Coverage.IsSinceHerLast(herd.Vocabulary.FindKind("mating")!.Id).ShouldBeTrue();
    }

    [Fact]
    public void Blank_is_never_covers_from_birth()
    {
        var herd = Herd("last abortion in \"Calved\"\n    last mating in \"Served\", blank is never");

        Covered(herd, "2", "mating").ShouldBe("2026-01-01 to 2026-09-25");
        Covered(herd, "1", "mating").ShouldBe("2026-09-01 to 2026-09-25");
        Covered(herd, "3", "abortion").ShouldBe("");
    }

    [Fact]
    public void An_entry_after_the_last_contradicts_the_sheet()
    {
        var herd = Herd(
            "last mating in \"Served\", blank is never",
            ("diary.csv", "Day,No,What\n2026-09-20,1,mating\n2026-09-28,2,mating\n2026-03-01,3,mating\n"),
            "\n  from \"diary.csv\", a row for each event, up to 2026-09-30\n    date in \"Day\"\n    animal in \"No\"\n    kind in \"What\"\n");

        Covered(herd, "1", "mating").ShouldBe("");
        Covered(herd, "2", "mating").ShouldBe("2026-01-01 to 2026-09-25", "what came after the sheet says nothing against it");
        Covered(herd, "3", "mating").ShouldBe("", "there was one after all");
    }

    [Fact]
    public void A_promise_of_the_kind_and_the_sheet_cover_together()
    {
        var herd = Herd(
            "last mating in \"Served\"",
            ("diary.csv", "Day,No,What\n2026-09-01,1,mating\n"),
            "\n  from \"diary.csv\", a row for each event, up to 2026-09-30\n    date in \"Day\"\n    animal in \"No\"\n    kind in \"What\"\n      - \"mating\" is mating\n",
            "  complete for mating since 2026-09-15\n");

        Covered(herd, "1", "mating").ShouldBe("2026-09-01 to 2026-09-25");
        Covered(herd, "2", "mating").ShouldBe("2026-09-15 to 2026-09-25", "a kind reaches no further than the earliest of its sources");
    }

    [Fact]
    public void A_month_puts_the_kind_in_doubt_for_her_on_its_days()
    {
        var herd = Herd(
            "sex is F", ("diary.csv", "Day,No,What\n08.2026,1,mating\n2026,2,mating\n09.2026,3,purchase\n01.09.2026,4,mating\n"),
            "\n  from \"diary.csv\", a row for each event\n    dates day first\n    date in \"Day\"\n    animal in \"No\"\n    kind in \"What\"\n",
            "  complete for mating since 2026-01-01\n");

        Covered(herd, "1", "mating").ShouldBe("2026-01-01 to 2026-07-31, 2026-09-01 to 2026-09-30");
        Covered(herd, "2", "mating").ShouldBe("");
        Covered(herd, "4", "mating").ShouldBe("2026-01-01 to 2026-09-30");
        herd.Membership.At(herd.Find("3"), Day.Number(Words.Date("2026-02-01"))).ShouldBe(Presence.NotKnown, "a joining of a month may shift all that follows");
        herd.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Code).ShouldBe(["R0121", "R0121", "R0121"]);
    }

    /// <summary>A sheet made from what truly happened never covers a day on which something happened that is not on record.</summary>
    [Fact]
    public void What_a_true_sheet_covers_is_true() => Gen.Int[0, 60].Array[0, 4].Array[3].Hold(
        days =>
        {
            var rows = days.Select((own, animal) => $"{animal + 1},{(own.Length == 0 ? "" : Iso(own.Max()))}\n");
            var herd = Read("last mating in \"S\", blank is never", [("cows.csv", "No,S\n" + string.Concat(rows))], "", "");
            for (var animal = 0; animal < days.Length; animal++)
            {
                var last = days[animal].DefaultIfEmpty(int.MinValue).Max();
                for (var day = 0; day <= 70; day++)
                {
                    Covers(herd, herd.Find($"{animal + 1}"), "mating", First + day).ShouldBe(day >= last && First + day <= AsAt, $"animal {animal + 1}, day {day}");
                }
            }
        },
        show: days => string.Join(" | ", days.Select(own => string.Join(' ', own))));

    private static readonly int First = Day.Number(Words.Date("2026-07-20"));

    private static readonly int AsAt = Day.Number(Words.Date("2026-09-25"));

    private static string Iso(int day) => NodaTime.Text.LocalDatePattern.Iso.Format(Day.Date(First + day));

    private static bool Covers(Herd herd, int animal, string kind, int day) => herd.Coverage.Covers(animal, herd.Vocabulary.FindKind(kind)!.Id, day, day, strict: true);

    /// <summary>The days of this year that are covered.</summary>
    private static string Covered(Herd herd, string animal, string kind)
    {
        var (spans, from) = (new List<string>(), 0);
        for (var day = Day.Number(Words.Date("2026-01-01")); day <= Day.Number(Words.Date("2026-10-01")); day++)
        {
            var isCovered = Covers(herd, herd.Find(animal), kind, day);
            if (isCovered && from == 0)
            {
                from = day;
            }
            else if (!isCovered && from != 0)
            {
                spans.Add($"{Shown.Date(from)} to {Shown.Date(day - 1)}");
                from = 0;
            }
        }

        return string.Join(", ", spans);
    }

    private static Herd Herd(string lines, (string Name, string Text)? more = null, string sources = "", string promises = "") =>
        Read(lines, [("cows.csv", Sheet), .. more is { } one ? new[] { one } : []], sources, promises);

    private static Herd Read(string lines, (string Name, string Text)[] files, string sources, string promises)
    {
        var rules = RulebookReader.Read("farm.byre", new OneFile(
            "event mating\nevent calving\nevent abortion\nevent purchase joins the herd\ntest pregnancy test  answers pregnant, empty\n\nrecords\n  up to 2026-09-30\n" + promises
            + "  from \"cows.csv\", a row for each animal, as at 2026-09-25\n    animal in \"No\"\n    " + lines + sources))!;
        DiagnosticText.Of(rules.Problems).ShouldBe("");
        var input = SourceReader.Read(file => Encoding.UTF8.GetBytes(Array.Find(files, one => one.Name == file).Text), file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
        return HerdReading.Read(input, rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd;
    }
}
