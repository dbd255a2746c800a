using System.IO.Compression;
using Byrelaw.Records.Suggesting;
using Byrelaw.Testing.Workbooks;
using NodaTime;

namespace Byrelaw.Records.Tests.Suggesting;

/// <summary>What is suggested for small files: which lines count, and which wait for a person.</summary>
public sealed class SuggesterTests
{
    private static readonly LocalDate Today = new(2026, 10, 1);

    [Fact]
    public void Files_in_the_landed_form_leave_nothing_open_but_what_nobody_wrote()
    {
        var lines = Lines(("cows.csv", "animal,born,sex,mob\n1,2020-01-09,F,Hill\n2,2021-02-28,F,Hill\n"), ("book.csv", "date,animal,kind,value,unit\n2026-08-02,1,calving,,\n2026-08-03,2,weight,510,kg\n2026-08-09,2,heat,,\n"));
        lines.Where(line => !Waits(line)).ShouldBe([
            "from \"book.csv\", a row for each event", "animal in \"animal\"", "date in \"date\"", "kind in \"kind\"", "value in \"value\"", "unit in \"unit\"",
            "from \"cows.csv\", a row for each animal", "animal in \"animal\"", "born in \"born\"", "sex in \"sex\"", "mob in \"mob\"",
        ]);
        lines.Where(Waits).Select(line => line[..12]).ShouldBe(["# ? up to 20", "# ? complete", "# ? - \"weigh"]);
    }

    [Fact]
    public void A_column_of_herds_is_offered_as_one_and_one_that_may_tell_of_services_is_not_left_out_unseen()
    {
        var lines = Lines(("cows.csv", "No,Herd,Born,Served,Colour\n1,North,2020-01-09,,red\n2,South,2021-02-28,,red\n3,South,2021-02-28,,roan\n"));
        lines.ShouldContain("# ? herd in \"Herd\"");
        lines.ShouldContain("# ? FILL-IN in \"Served\"");
        lines.ShouldContain("# ? leave out columns \"Colour\"");
    }

    [Fact]
    public void A_scan_is_not_of_the_day_on_which_she_was_born() =>
        Lines(("cows.csv", "No,DOB,PD\n1,2020-01-09,P\n2,2021-02-28,E\n3,2021-03-01,P\n")).ShouldNotContain(line => line.Contains("dated in \"DOB\"", StringComparison.Ordinal));

    [Fact]
    public void A_tag_in_groups_of_digits_is_the_same_tag_and_a_symbol_before_its_unit_is_one()
    {
        var lines = Lines(
            ("cows.csv", "No,Tag\n1,554000700041001\n2,554000700041002\n3,554000700041003\n"),
            ("lab.csv", "EID,Sampled,Cu (umol/L)\n554 000700041001,2026-08-02,11\n554 000700041002,2026-08-02,12\n554 000700041003,2026-08-02,9\n"));
        lines.ShouldContain(line => line.EndsWith("animal in \"EID\", by official identity", StringComparison.Ordinal));
        lines.ShouldContain(line => line.StartsWith("# ? ", StringComparison.Ordinal) && line.Contains("copper in \"Cu (umol/L)\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Results_in_a_column_of_their_own_are_offered_as_values_of_the_column_that_says_what_happened() =>
        Lines(("diary.csv", "Date,No,Event,Result\n2026-08-02,1,PD,pregnant\n2026-08-02,2,PD,empty\n2026-08-03,1,calving,\n2026-08-04,2,heat,\n"))
            .ShouldContain("# ? value in \"Result\"");

    [Fact]
    public void A_diary_of_three_columns_has_none_for_results()
    {
        var lines = Lines(("diary.csv", "Date;No;Event\n" + string.Concat(Enumerable.Range(10, 12).Select(day => $"{day}.02.2026;{day % 4};{(day % 2 == 0 ? "PD" : "HT")}\n"))));
        lines.ShouldContain(line => line.StartsWith("# ? - \"PD\" is pregnancy test", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("25/03/2026,26/03/2026", "dates day first")]
    [InlineData("03/25/2026,03/26/2026", "dates month first")]
    [InlineData("2026-03-25,2026-03-26", null)]
    [InlineData("25.3.26,26.3.26", "dates day first;short years")]
    [InlineData("05/03/2026,06/03/2026", "# ? dates day first;# ? dates month first")]
    [InlineData("25/03/2026,06/03/2026", "# ? dates day first")]
    [InlineData("13/03/2026,14/03/2026,15/03/2026,16/03/2026,17/03/2026,18/03/2026,19/03/2026,20/03/2026,21/03/2026,22/03/2026,23/03/2026,24/03/2026,26/13/2026", "# ? dates day first")]
    public void The_order_of_dates_counts_where_cells_decide_it(string dates, string? wanted) => string.Join(';', Lines(("book.csv",
        "Date,Cow,Event\n" + string.Concat(dates.Split(',').Select((date, i) => $"{date},{i % 2},heat\n")) + $"{dates.Split(',')[0]},1,heat\n")).Where(line => line.Contains("dates ", StringComparison.Ordinal) || line == "short years"))
        .ShouldBe(wanted ?? "");

    [Theory]
    [InlineData("4,5 3,5", "decimal comma")]
    [InlineData("4.5 3.5", "")]
    [InlineData("4,5 3.5", "# ? decimal comma")]
    [InlineData("1,500 2,100", "# ? decimal comma")]
    public void A_decimal_comma_counts_where_nothing_else_can_be_meant(string values, string wanted) => string.Join(';', Lines(("book.csv",
        "Date;Cow;Event;Value\n" + string.Concat(values.Split(' ').Select(value => $"2026-03-25;1;body condition;{value}\n"))))
        .Where(line => line.Contains("decimal", StringComparison.Ordinal))).ShouldBe(wanted);

    [Fact]
    public void A_title_above_the_headings_a_packed_file_and_a_computers_own_letters_are_seen()
    {
        var lines = Lines(
            ("a.csv.gz", Packed("Cow;Date;What\n1;2026-03-01;heat\n2;2026-03-01;heat\n1;2026-03-02;heat\n")),
            ("b.txt", Encoding.Latin1.GetBytes("Unsere K\u00FChe\n\nNo\tDOB\tRace\n1\t2020-01-09\tJersey\n2\t2020-01-09\tFriesian\n")));
        lines.ShouldContain("from \"a.csv.gz\", separated by semicolons, a row for each event");
        lines.ShouldContain("from \"b.txt\", headings in row 3, separated by tabs, in Windows-1252, a row for each animal");
    }

    [Fact]
    public void A_word_that_may_be_a_service_is_never_suggested_to_be_left_out()
    {
        var lines = Lines(("book.csv", "Date,Cow,Event\n2026-03-01,1,AI\n2026-03-02,1,AI\n2026-03-02,2,run with bull\n2026-03-03,2,hoof bath\n"));
        lines.Where(line => line.Contains("\"AI\"", StringComparison.Ordinal)).ShouldBe(["# ? - \"AI\" is mating"]);
        lines.Where(line => line.Contains("run with", StringComparison.Ordinal)).ShouldBe(["# ? - \"run with bull\" is \"bull in\""]);
        lines.Where(line => line.Contains("hoof", StringComparison.Ordinal)).ShouldBe(["# ? - \"hoof bath\" is FILL-IN", "# ? - \"hoof bath\" is left out"]);
    }

    [Theory]
    [InlineData("BCS", "body condition")]
    [InlineData("LMN", "lameness")]
    [InlineData("Cu", "serum copper,liver copper")]
    [InlineData("XQZ", "")]
    public void A_short_text_is_shown_the_words_that_it_may_stand_for(string text, string wanted) =>
        string.Join(',', Abbreviations.KindsFor(text, Base()).Select(kind => kind.Name)).ShouldBe(wanted);

    [Fact]
    public void Where_two_columns_may_name_the_animal_a_person_chooses()
    {
        var lines = Lines(
            ("cows.csv", "id,born\nF1,2020-01-09\nF2,2020-02-09\nF3,2020-03-09\nF4,2020-03-10\n"),
            ("services.csv", "farm,beast,day\nF1,F2,2026-03-01\nF1,F3,2026-03-02\nF2,F2,2026-03-02\nF2,F4,2026-03-09\n"));
        lines.Where(line => line.Contains("animal in", StringComparison.Ordinal)).ShouldBe(["animal in \"id\"", "# ? animal in \"beast\"", "# ? animal in \"farm\""]);
    }

    [Fact]
    public void What_cannot_be_read_is_named_and_the_rest_is_suggested()
    {
        var text = Suggest(("herd.xlsx", [0x50, 0x4B, 3, 4]), ("empty.csv", []), ("book.csv", Bytes("Date,Cow,Event\n2026-03-01,1,heat\n2026-03-02,1,heat\n")));
        text.ShouldContain("# herd.xlsx: no workbook that can be read; an older one (.xls) or one with a password: save it as .xlsx without a password");
        text.ShouldContain("# empty.csv: no rows below its headings");
        text.ShouldContain("from \"book.csv\"");
    }

    [Fact]
    public void Sheets_of_a_workbook_are_tables_and_their_own_dates_leave_no_order_open()
    {
        var book = MadeWorkbook.Of(
            ("Notes", ""),
            ("Cows", MadeWorkbook.Row(1, "Our herd") + MadeWorkbook.Row(2, "Line No", "DOB", "Calved") + string.Concat(Enumerable.Range(3, 4).Select(row => $"<row r=\"{row}\">{MadeWorkbook.Text('A', row, $"30{row}")}<c r=\"B{row}\" s=\"1\"><v>{43000 + row}</v></c><c r=\"C{row}\" s=\"1\"><v>{46200 + row}</v></c></row>"))
                + "<row r=\"7\">" + MadeWorkbook.Text('A', 7, "Total") + "<c r=\"C7\"><v>4</v></c></row>"));
        Lines(("herd.xlsx", book)).ShouldBe([
            "# ? up to 2026-07-03", "# ? complete for calving, abortion, mating, transfer, pregnancy test, drying off, bull in, bull out, purchase since 2026-01-01",
            "from \"herd.xlsx\", sheet \"Cows\", headings in row 2, a row for each animal", "animal in \"Line No\"", "# ? leave out rows where \"Line No\" is \"Total\"",
            "born in \"DOB\"", "calving in \"Calved\"", "# ? last calving in \"Calved\"", "# ? sex is F",
        ]);
        Suggest(("herd.xlsx", book)).ShouldContain("# herd.xlsx, Notes: no rows below its headings\n# herd.xlsx, Cows: 5 rows, 3 columns\n");
    }

    [Fact]
    public void Messages_of_the_exchange_are_one_source_a_folder()
    {
        var lines = Lines(
            ("ade/a.json", """[ { "resourceType": "icarReproHeatEventResource", "animal": { "id": "1" }, "eventDateTime": "2026-01-01" } ]"""),
            ("ade/b.json", """[ { "resourceType": "icarReproHeatEventResource", "animal": { "id": "1" }, "eventDateTime": "2026-01-02" } ]"""),
            ("services.json", """{ "inseminationType": "Insemination", "animal": { "id": "1" }, "eventDateTime": "2026-01-02T10:00:00Z" }"""),
            ("settings.json", "{ \"colour\": 1 }"));
        lines.Skip(2).ShouldBe(["from \"ade\", as layout \"ICAR ADE\"", "# ? from \"services.json\", as layout \"ICAR ADE\", times in \"FILL-IN\""]);
    }

    /// <summary>An export as programs write it: each untidy thing in it, and all of them, leave what its rows are about as it is.</summary>
    [Theory]
    [InlineData(false, false, false, false)]
    [InlineData(true, false, false, false)]
    [InlineData(false, true, false, false)]
    [InlineData(false, false, true, false)]
    [InlineData(false, false, false, true)]
    [InlineData(true, true, true, true)]
    public void One_untidy_row_does_not_change_what_a_file_is(bool hasTitle, bool hasTotal, bool isTwice, bool hasBreaks)
    {
        var rows = string.Concat(Enumerable.Range(10, 30).Select(i => $"DE 415{i};Daisy {i};w;{i - 9:00}/08/2021;Dry cows;{(hasBreaks && i % 7 == 0 ? "\"lame,\nsee vet\"" : "")}\n{(i == 20 ? ";;;;;\n" : "")}"));
        var cows = $"{(hasTitle ? "Herd list;;;;;\nPrinted 29/11/2026;;;;;\n;;;;;\n" : "")}Cow No;Name;Sex;Born;Pen;Remarks\n{rows}{(isTwice ? "DE 41510;Daisy 10;w;01/08/2021;Bulls;\n" : "")}{(hasTotal ? "Total;30;;;;\n" : "")}";
        var book = "Cow No;Day;Entry;Detail\n" + string.Concat(Enumerable.Range(10, 30).Concat(Enumerable.Range(10, 15)).Select(i => $"DE 415{i};{i - 9:00}/09/2026;AI;\n"));
        var lines = Lines(("cows.csv", cows), ("book.csv", book));
        lines.ShouldContain($"from \"cows.csv\", {(hasTitle ? "headings in row 4, " : "")}separated by semicolons, a row for each animal");
        lines.ShouldContain("from \"book.csv\", separated by semicolons, a row for each event");
        lines.Count(line => line == "animal in \"Cow No\"").ShouldBe(2);
        lines.ShouldContain("born in \"Born\"");
        lines.Where(line => !Waits(line) && line.StartsWith('-')).ShouldBeEmpty();
    }

    /// <summary>Titles, rows that group columns and columns without a name: a row of data is never taken for the headings.</summary>
    [Theory]
    [InlineData("|Vet||;Tag|Visit|Result|Days;A 1|2026-01-03|Pregnant|37;A 2|2026-01-03|Empty|35", "headings in row 2")]
    [InlineData("Scans|||;;Tag|Visit|Result|Days;A 1|2026-01-03|Pregnant|;A 2|2026-01-03||35", "headings in row 3")]
    [InlineData("|Cow||Visit;Tag|Name|Day|;A 1|Ada|2026-01-03|Empty;A 2|Bea|2026-01-03|Pregnant", "headings in rows 1 to 2")]
    [InlineData("Tag|Name|Day;A 1|Ada|heat;A 2|Bea|heat", "")]
    [InlineData("A 1|2026-01-03|heat|;A 2|2026-01-04|heat|lame;A 1|2026-01-05|heat|", "none")]
    public void Headings_are_found_below_titles_and_groups(string rows, string wanted)
    {
        var from = Suggest(("scans.csv", Bytes(rows.Replace(';', '\n') + "\n"))).Split('\n').Single(line => line.Contains("from \"scans.csv\"", StringComparison.Ordinal));
        if (wanted == "none")
        {
            from.ShouldStartWith("  # ? from");
            from.ShouldContain("no row of it looks like headings");
        }
        else
        {
            from.ShouldStartWith($"  from \"scans.csv\", {(wanted.Length == 0 ? "" : $"{wanted}, ")}separated by bars");
        }
    }

    [Fact]
    public void Where_a_programme_says_which_row_holds_the_headings_that_is_kept()
    {
        var file = ("cows.csv", Bytes("Old;Other\nNo;DOB\n1;2020-01-02\n2;2020-01-03\n"));
        var said = RulebookReader.Read("farm.byre", new OneFile("records \"records\"\n  from \"cows.csv\", headings in row 2, separated by semicolons, a row for each animal\n    animal in \"No\"\n"))!.Rulebook.Records!.Sources;
        Suggest(file).ShouldNotContain("headings in row 2");
        RecordsSuggester.Suggest("records", [file], Base(), Today, said).ShouldContain("headings in row 2");
    }

    [Fact]
    public void A_sheet_of_one_thing_says_what_it_is_and_answers_are_offered_as_answers()
    {
        const string Cows = "Line No;Sex\n1;F\n2;F\n3;F\n";
        var scans = Lines(("cows.csv", Cows), ("scans.csv", "Line No;Check Date;Result\n1;2026-03-01;Preg\n2;2026-03-01;Open\n3;2026-03-01;Not in calf\n1;2026-04-01;Recheck\n2;2026-04-01;Preg\n"));
        scans.ShouldContain("# ? pregnancy test in \"Result\"");
        scans.Where(line => line.Contains(" is ", StringComparison.Ordinal)).ShouldBe(["# ? - \"Preg\" is pregnant", "# ? - \"Not in calf\" is empty", "# ? - \"Open\" is empty", "# ? - \"Recheck\" is pending"]);
        Lines(("cows.csv", Cows), ("old/calvings.csv", "Line No;Fresh Date;Ease\n1;2026-03-01;1\n1;2026-03-09;2\n2;2026-03-01;1\n")).ShouldContain("# ? kind is calving");
        Lines(("cows.csv", Cows), ("services.csv", "Line No;Bred;Method;Sire\n1;2026-03-01;AI;Max\n1;2026-03-09;Natural;\n2;2026-03-01;AI;\n")).Where(line => line.Contains("kind is", StringComparison.Ordinal) || line.Contains("Natural", StringComparison.Ordinal) || line.StartsWith("sire", StringComparison.Ordinal))
            .ShouldBe(["# ? kind is mating", "# ? - \"Natural\" is mating, method is natural", "# ? - \"Natural\" is \"bull in\"", "sire in \"Sire\""]);
    }

    [Fact]
    public void Results_are_sought_where_they_stand_and_words_that_are_known_are_named()
    {
        (string, byte[])[] files =
        [
            ("cows.csv", Bytes("Line No,Sex\n1,F\n2,F\n3,F\n")),
            ("diary.csv", Bytes("Line No,Date,Event,Detail,Score\n1,2026-03-01,BCS,,4.5\n2,2026-03-01,BCS,,3.5\n1,2026-03-02,Bulling,,\n2,2026-03-02,Moved,Hill,\n3,2026-03-02,Wt lbs,,1200\n3,2026-03-09,PD+,,\n")),
        ];
        var lines = Lines(files);
        lines.ShouldContain("# ? - \"BCS\" is body condition, value in \"Score\"");
        lines.ShouldContain("# ? - \"Moved\" is mob, value in \"Detail\"");
        lines.ShouldContain("# ? - \"Wt lbs\" is weight, value in \"Score\", in lb");
        lines.ShouldContain("# ? - \"PD+\" is pregnancy test, pregnant");
        Suggest(files).ShouldContain("kind in \"Event\"  # 5 different; read as they are: `Bulling`");
    }

    [Fact]
    public void Until_somebody_says_what_a_row_is_about_nothing_else_counts()
    {
        var lines = Lines(("book.csv", "Beast;Date;Remarks;What for\nA1;2026-03-01;x;y\nA1;2026-03-02;;y\nA2;2026-03-02;;\n"));
        lines.ShouldContain("# ? note in \"Remarks\"");
        Suggest(("book.csv", Bytes("Beast;Date\nA1;2026-03-01\nA1;2026-03-02\n"))).ShouldContain("# No file here is known to say which animals there are.");
    }

    [Theory]
    [InlineData("%PDF-1.4\nlist;of;cows\n1;2;3\n")]
    [InlineData("\u0001\u0002\u0003\u0004,a\u0005\nb,c\n")]
    public void What_is_no_list_is_none(string text) => Suggest(("a.csv", Bytes(text))).ShouldContain("# a.csv: no text that can be read: a list that byrelaw can read is a CSV");

    [Fact]
    public void A_sheet_of_one_visit_is_suggested_as_results_of_its_day_and_the_other_files_speak_for_an_order()
    {
        var said = Suggest(
            ("cows.csv", Bytes("No,Born,Sex\n1,27/08/2017,F\n2,30/01/2018,F\n3,14/02/2018,F\n4,02/03/2019,F\n")),
            ("vet.csv", Bytes("Visit,Cow,Result\n11/10/2026,1,PD+\n11/10/2026,2,PD-\n11/10/2026,3,PD+\n")));
        said.ShouldContain("from \"vet.csv\", a row for each event");
        said.ShouldContain("# ? dates day first  # no cell decides: `11/10/2026` is 11 October; so has cows.csv\n");
        said.ShouldContain("# ? dates month first  # no cell decides: `11/10/2026` is 10 November\n");
        said.ShouldContain("date in \"Visit\"");
        said.ShouldContain("# ? pregnancy test in \"Result\"");
        said.ShouldContain("# ? - \"PD+\" is pregnant");
        said.ShouldNotContain("leave out columns \"Visit\"");
    }

    [Fact]
    public void Nobody_is_offered_only_to_leave_out_days_or_results()
    {
        var lines = Lines(("cows.csv", "No,geboren,Geschlecht,Belegt am,Befund\n1,2017-08-27,w,2026-09-01,tragend\n2,2018-01-30,w,2026-09-02,tragend\n3,2018-02-14,w,,leer\n"));
        lines.ShouldContain("# ? FILL-IN in \"Belegt am\"");
        lines.Where(line => line.Contains("leave out columns", StringComparison.Ordinal)).ShouldAllBe(line => !line.Contains("Belegt", StringComparison.Ordinal) && !line.Contains("Befund", StringComparison.Ordinal));
    }

    /// <summary>Whatever lies in a folder, the lines can be read, or say what is missing; nothing breaks.</summary>
    [Fact]
    public void Any_bytes_get_an_answer() => Each.Hold(
        Gen.Select(Gen.Byte.Array[0, 400], Gen.Char["ab1;,\t\n\"/.-2026 \u0001"].Array[0, 300]), 400, files =>
        {
            var said = Suggest(("x.csv", files.Item1), ("y.csv", Bytes(new string(files.Item2))));
            return RulebookReader.Read("farm.byre", new OneFile("use base vocabulary edition 1\n" + said))!.Rulebook.Records is null ? said : null;
        }, files => $"{Convert.ToHexString(files.Item1)}\n{new string(files.Item2)}");

    private static string[] Lines(params (string Name, string Text)[] files) => Lines([.. files.Select(file => (file.Name, Bytes(file.Text)))]);

    /// <summary>The lines below <c>records</c>, without remarks and without blanks around them.</summary>
    private static string[] Lines(params (string Name, byte[] Bytes)[] files) =>
        [.. Suggest(files).Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal)).Select(line => line.Trim()).Select(line => line.LastIndexOf("  # ", StringComparison.Ordinal) is > 0 and var at ? line[..at] : line)];

    private static bool Waits(string line) => line.StartsWith("# ? ", StringComparison.Ordinal);

    private static string Suggest(params (string Name, byte[] Bytes)[] files) => RecordsSuggester.Suggest("records", files, Base(), Today);

    private static Vocabulary Base() => RulebookReader.Read("farm.byre", new OneFile("use base vocabulary edition 1\n"))!.Rulebook.Vocabulary;

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] Packed(string text)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(Bytes(text));
        }

        return packed.ToArray();
    }
}
