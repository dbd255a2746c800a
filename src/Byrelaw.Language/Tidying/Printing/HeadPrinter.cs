using Byrelaw.Language.Canonical;
using Byrelaw.Language.Syntax;
using Byrelaw.Language.Syntax.Lines;
using Byrelaw.Language.Tidying.Layouts;

namespace Byrelaw.Language.Tidying.Printing;

/// <summary>Lines that start a block, other than declarations.</summary>
internal static class HeadPrinter
{
    /// <summary>How it is set; null for other lines.</summary>
    public static Layout? Of(LineSyntax line) => line switch
    {
        UseLine use => Named("use", use.Path),
        DefineLine define => new OneLine($"define {Words.Name(define.Name)}"),
        RulesForLine rules => new OneLine($"rules for {Words.Name(rules.List)}"),
        RuleLine rule => Named(rule.IsSafety ? "safety rule" : "rule", rule.Name),
        PreferLine prefer => Named("prefer", prefer.Name),
        ChangeLine change => Named("change", change.Rule),
        DropLine drop => Named("drop", drop.Rule),
        WaiveLine waive => Named($"waive {NameText.Text(waive.Rule.Value)} for", waive.Animal),
        RecordsLine { Folder: { } folder } => Named("records", folder),
        RecordsLine => new OneLine("records"),
        ProgrammeLine programme => Named("programme", programme.Name),
        _ => null,
    };

    private static EndsWithText Named(string words, TextSyntax name) => new(words, name.Value, RunsOn: false);
}
