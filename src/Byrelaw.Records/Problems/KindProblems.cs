namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with what a row says happened.</summary>
internal static class KindProblems
{
    private const string Expected = "expected an event, a measure or a test that the rule files declare";

    public static Diagnostic NoKind(RowText row, int cell) => row.Problem(
        cell, "R0141", Severity.Error, "this row does not say what happened", Expected);

    /// <summary>The same few words stand in most such rows: what is said of a word is made once.</summary>
    public static Diagnostic Undeclared(RowText row, int cell, (string Found, string Help) said) => row.Problem(cell, "R0142", Severity.Error, said.Found, Expected, said.Help);

    /// <summary>What is said of a word that nobody declares.</summary>
    public static (string Found, string Help) OfUndeclared(string word, string? nearest, IReadOnlyList<string> hinted) =>
        ($"no rule file declares `{word}`", KindAdvice.InRules(word, nearest, hinted));
}
