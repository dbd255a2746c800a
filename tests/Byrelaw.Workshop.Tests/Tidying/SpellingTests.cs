namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>One spelling for each idea; names are people's own words and stay as they are.</summary>
public sealed class SpellingTests
{
    [Theory]
    [InlineData("NO Heat EVER", "no Heat ever")]
    [InlineData("exactly 0 heats ever", "no heats ever")]
    [InlineData("at least 1 heat in the last 1 weeks", "at least 1 heat in the last 1 week")]
    [InlineData("at least 1 heat in the last 30 day", "at least 1 heat in the last 30 days")]
    [InlineData("no heat between 28 days and 365 days ago", "no heat between 28 and 365 days ago")]
    [InlineData("no heat between 4 weeks and 365 days ago", "no heat between 4 weeks and 365 days ago")]
    [InlineData("between 6 days and 8 days since last heat", "between 6 and 8 days since last heat")]
    [InlineData("parity at most 06.0", "parity at most 6")]
    [InlineData("latest body condition ever between 4.0 and 6.00", "latest body condition ever between 4 and 6")]
    [InlineData("latest body condition ever between 4 and 5.5", "latest body condition ever between 4.0 and 5.5")]
    [InlineData("latest body condition at least 4, ever", "latest body condition ever at least 4")]
    [InlineData("latest serum copper ever at least 7 µmol/l", "latest serum copper ever at least 7 umol/L")]
    [InlineData("latest serum copper ever between 7.0 UMOL/L and 8.25 umol/L", "latest serum copper ever between 7.00 and 8.25 umol/L")]
    [InlineData("latest serum copper ever between 7000 nmol/L and 8 umol/L", "latest serum copper ever between 7000 nmol/L and 8 umol/L")]
    [InlineData("age at least 1 years", "age at least 1 year")]
    [InlineData("breed is one of Jersey", "breed is Jersey")]
    [InlineData("breed is not one of Jersey,Friesian", "breed is not one of Jersey, Friesian")]
    [InlineData("latest \"body  condition\" ever at least 4", "latest \"body  condition\" ever at least 4")]
    [InlineData("latest weight at least 60.0% of mature   weight in the last 60 days", "latest weight in the last 60 days at least 60% of mature weight")]
    [InlineData(
        "average serum copper, at least 7 umol/L from at least 1 animals of her mob ever", "average serum copper of her mob ever, from at least 1 animal, at least 7 umol/L")]
    [InlineData(
        "at most 1 of her mob with serum copper, from at least 10 animals less than 7 umol/L in the last 60 days",
        "at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals")]
    public void A_condition_has_one_spelling(string written, string tidied) =>
        Tidied.Text($"{Rules.Words}\ndefine it\n{written}\n").ShouldEndWith($"\n\ndefine it\n  {tidied}\n");

    [Theory]
    [InlineData("event \"bull  in\",also  bulls in , leaves the herd not before 1 Months of age", "event \"bull  in\"  also bulls in, not before 1 month of age, leaves the herd")]
    [InlineData("event heat, also heats also oestrus", "event heat  also heats, oestrus")]
    [InlineData("measure copper also Cu, molar mass 63.50 in µmol/L", "measure copper  in umol/L, molar mass 63.5  also Cu")]
    [InlineData("measure copper in the yards in umol/L", "measure copper  in umol/L  in the yards")]
    [InlineData("test BVD in the yards also virus answers positive , negative", "test BVD  answers positive, negative  in the yards  also virus")]
    [InlineData("fact breed also sort, is one of A,B", "fact breed  is one of A, B  also sort")]
    public void A_declaration_has_one_spelling(string written, string tidied) => Tidied.Text(written).ShouldBe(tidied + "\n");

    [Fact]
    public void Declarations_that_no_empty_line_parts_line_up() => Tidied.Text(
        """
        event heat also heats
        event calving
        spell bull about from bull in until bull out
        event bull in
        event bull out

        measure serum B12 in pmol/L, molar mass 1355.37, also vitamin B12
        measure zinc in umol/L, molar mass 65.38
        measure score on scale 1 to 10 also condition

        fact a very long name indeed is text
        """).ShouldBe(
        """
        event heat        also heats
        event calving
        spell bull about  from bull in until bull out
        event bull in
        event bull out

        measure serum B12  in pmol/L,        molar mass 1355.37  also vitamin B12
        measure zinc       in umol/L,        molar mass 65.38
        measure score      on scale 1 to 10                      also condition

        fact a very long name indeed  is text

        """.ReplaceLineEndings("\n"));

    [Fact]
    public void A_byte_order_mark_and_carriage_returns_go_and_the_last_line_ends()
    {
        Tidied.Text("\uFEFFevent heat  # it\r\nevent calving").ShouldBe("event heat  # it\nevent calving\n");
        Tidied.Result("\uFEFFevent heat\n").IsTidy.ShouldBeFalse();
        Tidied.Result("event heat\r\n").IsTidy.ShouldBeFalse();
        Tidied.Result("event heat").IsTidy.ShouldBeFalse();
        Tidied.Result("event heat\n").IsTidy.ShouldBeTrue();
    }

    [Fact]
    public void An_empty_file_stays_empty() => Tidied.Text(" \n\t\n").ShouldBe("");
}
