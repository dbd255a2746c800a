using System.Text;
using Byrelaw.Judging;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Records.Herds;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.Tests.Calendar;

/// <summary>A farm that a test writes out: rules, a programme, and rows of records.</summary>
internal sealed record WrittenPlan : IRuleFiles
{
    private const string Words = """
        event calving  not before 15 months of age
        event mastitis
        event sale  leaves the herd
        event purchase  joins the herd
        event mating
        event transfer
        event drying off
        event bull in
        event bull out
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        fact origin  is one of home-bred, bought
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, hand, blank is hand
        measure serum copper  in umol/L
        test BVD virus  answers positive, negative

        method "Progesterone insert"
          day 0 "Put in the device; GnRH", device in
          day 7 "Take out the device; prostaglandin", device out
          day 9 "GnRH"
          counts as heat on day 9
          source "McDougall and others 2013, Theriogenology 79:882"
        method "Prostaglandin once"
          day 0 "Prostaglandin"
          in heat 70%, weight 20, on day 2 20%, day 3 45%, day 4 25%, day 5 10%
          if not seen by day 5, again on day 11 to 14
          because "Cheap."
        method "Natural heat"
          cycles every 21 days
          because "Nothing is given."


        """;

    private const string Rules = """
        rules for donors
        rule "Two clean months"
          needs no mastitis in the 60 days before collection
          because "b"
        rules for treatment
        rule "Forty days calved"
          needs at least 40 days since last calving
          because "b"
        rules for recipients
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "b"
        rule "Copper"
          needs latest serum copper in the last 60 days at least 8 umol/L
          because "b"

        """;

    private const string AllLists = """

          choose donors from "1", judged on collection
          choose treatment from "2", "3", "4", judged on first treatment
          choose recipients from "2", "3", "4", judged from first transfer to final transfer

        """;

    private string _text = "";

    /// <summary>Lines of the programme, other than its lists.</summary>
    public string Programme { get; init; } = """
        collection on 2026-10-12
        transfer 8 days after collection, over 2 days
        date first treatment 8 days before collection
        """;

    /// <summary>Lines that draw up lists.</summary>
    public string Lists { get; init; } = AllLists;

    /// <summary>Further statements.</summary>
    public string More { get; init; } = "";

    /// <summary>What is promised to be written down since 2015.</summary>
    public string Keeping { get; init; } = "calving, mastitis, sale, purchase, mating, transfer, drying off, bull in, bull out, pregnancy test";

    /// <summary>Whether no line sets the first treatment.</summary>
    public bool IsTreatmentLeftOut { get; init; }

    /// <summary>How many cows there are.</summary>
    public int Cows { get; init; } = 4;

    /// <summary>The heading of events.csv.</summary>
    public string Columns { get; init; } = "date,animal,kind,value,unit";

    /// <summary>Rows of events.csv.</summary>
    public ImmutableArray<string> Events { get; init; } = [];

    /// <summary>The day the records reach.</summary>
    public LocalDate UpTo { get; init; } = new(2026, 8, 1);

    public Rulebook Rulebook
    {
        get
        {
            var treatment = IsTreatmentLeftOut || Programme.Contains("first treatment", StringComparison.Ordinal) ? "" : "\n  date first treatment 16 days before first transfer";
            var lines = string.Join('\n', Programme.Split('\n').Select(line => "  " + line.Trim()));
            _text = $"use \"rules.byre\"\nrecords \"records\"\n  up to {UpTo:uuuu-MM-dd}\n  complete for {Keeping} since 2015-01-01\n\n{More}\nprogramme \"P\"\n{lines}{treatment}\n{Lists}";
            var reading = RulebookReader.Read("farm.byre", this)!;
            DiagnosticText.Of(reading.Problems.Where(problem => problem.Severity == Severity.Error)).ShouldBe("");
            return reading.Rulebook;
        }
    }

    /// <summary>Reads the records with a rulebook's words: cows numbered from 1, born in 2020.</summary>
    public Herd Herd(Rulebook rulebook) => HerdReader.Read(
        Encoding.UTF8.GetBytes("animal,born,sex\n" + string.Concat(Enumerable.Range(1, Cows).Select(cow => $"{cow},2020-05-01,F\n"))),
        Encoding.UTF8.GetBytes(Columns + "\n" + string.Concat(Events.Select(row => row + "\n"))), rulebook.Vocabulary, rulebook.Records);

    public (Rulebook Rulebook, ImmutableArray<ListJudgement> Lists) Judged()
    {
        var rulebook = Rulebook;
        return (rulebook, new Judge(rulebook, Herd(rulebook)).JudgeAll().Lists);
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => path switch
    {
        "farm.byre" => Encoding.UTF8.GetBytes(_text),
        "rules.byre" => Encoding.UTF8.GetBytes(Words + Rules),
        _ => null,
    };
}
