namespace Byrelaw.Language.Syntax.Lines;

/// <summary>A line of a rule file, with the lines that its texts run over.</summary>
internal abstract record LineSyntax : SyntaxNode;

/// <summary>A line that starts a block.</summary>
internal abstract record HeadLine : LineSyntax;

/// <summary><c>use "../vocabulary.byre"</c>.</summary>
internal sealed record UseLine(TextSyntax Path) : HeadLine;

/// <summary><c>use base recipients edition 1</c>.</summary>
internal sealed record UseBaseLine(NameSyntax Name, NumberSyntax? Edition) : HeadLine;

/// <summary><c>define empty</c>.</summary>
internal sealed record DefineLine(NameSyntax Name) : HeadLine;

/// <summary><c>rules for recipients</c>.</summary>
internal sealed record RulesForLine(NameSyntax List) : HeadLine;

/// <summary><c>rule "..."</c> or <c>safety rule "..."</c>.</summary>
internal sealed record RuleLine(TextSyntax Name, bool IsSafety) : HeadLine;

/// <summary><c>prefer "..."</c>.</summary>
internal sealed record PreferLine(TextSyntax Name) : HeadLine;

/// <summary><c>change "..."</c>.</summary>
internal sealed record ChangeLine(TextSyntax Rule) : HeadLine;

/// <summary><c>drop "..."</c>.</summary>
internal sealed record DropLine(TextSyntax Rule) : HeadLine;

/// <summary><c>waive "..." for "..."</c>.</summary>
internal sealed record WaiveLine(TextSyntax Rule, TextSyntax Animal) : HeadLine;

/// <summary><c>accept "..." as implied by "..."</c>.</summary>
internal sealed record AcceptLine(TextSyntax Name, TroubleSort Trouble, TextSyntax? Other) : HeadLine;

/// <summary><c>records "folder"</c>; no folder means the file's own.</summary>
internal sealed record RecordsLine(TextSyntax? Folder) : HeadLine;

/// <summary><c>programme "..."</c>.</summary>
internal sealed record ProgrammeLine(TextSyntax Name) : HeadLine;
