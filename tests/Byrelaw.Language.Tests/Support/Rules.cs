namespace Byrelaw.Language.Tests.Support;

/// <summary>Reads rules that a test writes out.</summary>
public static class Rules
{
    /// <summary>Words that most tests need.</summary>
    public const string Words = """
        event calving  also calvings, calved, not before 15 months of age
        event heat  also heats, oestrus
        event mating  also matings, service
        event transfer  also transfers
        event mastitis
        event metritis
        event bull in
        event bull out
        event sale  leaves the herd
        event purchase  joins the herd
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        measure serum copper  in umol/L, molar mass 63.546
        measure liver copper  in umol/kg, molar mass 63.546
        measure body condition  on scale 1 to 10
        measure weight  in kg
        test BVD virus  answers positive, negative
        test uterine check  answers clean, discharge
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, hand, blank is hand
        event drying off
        fact origin  is one of home-bred, bought
        fact breed  is one of Friesian, Jersey, crossbred
        fact breeding index  is number
        fact mature weight  in kg
        fact dam genomic date  is date
        fact official identity  is identity

        """;

    /// <summary>Reads one file.</summary>
    public static RulebookReading Read(string text) => Read(new RuleFilesInMemory().Add("farm.byre", text));

    /// <summary>Reads <c>farm.byre</c> and what it uses.</summary>
    public static RulebookReading Read(RuleFilesInMemory files) => RulebookReader.Read("farm.byre", files)!;

    /// <summary>Reads one file that must have no problem at all.</summary>
    public static Rulebook Good(string text) => Good(Read(text));

    /// <summary>The rulebook of a reading that must have no problem at all.</summary>
    public static Rulebook Good(RulebookReading reading)
    {
        DiagnosticText.Of(reading.Problems).ShouldBe("");
        return reading.Rulebook;
    }

    /// <summary>Binds one condition, with <see cref="Words"/>; it must have no error.</summary>
    public static Condition Condition(string condition, string more = "")
    {
        var reading = Read($"{Words}{more}\ndefine it\n  {condition}\n");
        DiagnosticText.Of(reading.Problems.Where(problem => problem.Severity == Severity.Error)).ShouldBe("");
        return reading.Rulebook.Defines.Single(define => define.Name == "it").Condition;
    }

    /// <summary>The problems of a text, as people read them.</summary>
    public static string Problems(string text) => DiagnosticText.Of(Read(text).Problems);
}
