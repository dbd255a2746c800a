namespace Byrelaw.LanguageServer.Protocol;

/// <summary>A place between two characters; both count from 0, the second in UTF-16 units.</summary>
internal sealed record Position(int Line, int Character);

/// <summary>A stretch of text; its end is not part of it.</summary>
internal sealed record Range(Position Start, Position End);

/// <summary>A stretch of one document.</summary>
internal sealed record Location(string Uri, Range Range);

/// <summary>Names a document.</summary>
internal sealed record DocumentName(string Uri, int? Version = null);

/// <summary>What every request about a document carries.</summary>
internal sealed record DocumentParams(DocumentName TextDocument);

/// <summary>What every request about a place carries.</summary>
internal sealed record PlaceParams(DocumentName TextDocument, Position Position);

/// <summary>New text in the place of some old one.</summary>
internal sealed record TextEdit(Range Range, string NewText);

/// <summary>Edits of several documents.</summary>
internal sealed record WorkspaceEdit(Dictionary<string, List<TextEdit>> Changes);
