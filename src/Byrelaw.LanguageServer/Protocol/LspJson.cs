using System.Text.Json.Serialization;

namespace Byrelaw.LanguageServer.Protocol;

/// <summary>Reads and writes the protocol's messages without reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = false)]
[JsonSerializable(typeof(InitializeParams))]
[JsonSerializable(typeof(InitializeResult))]
[JsonSerializable(typeof(RegistrationParams))]
[JsonSerializable(typeof(OpenParams))]
[JsonSerializable(typeof(ChangeParams))]
[JsonSerializable(typeof(WatchedParams))]
[JsonSerializable(typeof(PublishParams))]
[JsonSerializable(typeof(DocumentParams))]
[JsonSerializable(typeof(PlaceParams))]
[JsonSerializable(typeof(Hover))]
[JsonSerializable(typeof(CompletionList))]
[JsonSerializable(typeof(ReferenceParams))]
[JsonSerializable(typeof(List<Location>))]
[JsonSerializable(typeof(List<DocumentHighlight>))]
[JsonSerializable(typeof(RenameParams))]
[JsonSerializable(typeof(PrepareRenameResult))]
[JsonSerializable(typeof(WorkspaceEdit))]
[JsonSerializable(typeof(List<DocumentSymbol>))]
[JsonSerializable(typeof(List<FoldingRange>))]
[JsonSerializable(typeof(List<TextEdit>))]
[JsonSerializable(typeof(CodeActionParams))]
[JsonSerializable(typeof(List<CodeAction>))]
[JsonSerializable(typeof(SemanticTokens))]
[JsonSerializable(typeof(JsonElement))]
[JsonSerializable(typeof(string))]
internal sealed partial class LspJson : JsonSerializerContext;
