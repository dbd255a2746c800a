namespace Byrelaw.LanguageServer.Wire;

/// <summary>Why a request is refused, as the protocol numbers it (JSON-RPC 2.0, section 5.1; LSP 3.17, "ErrorCodes").</summary>
internal enum ErrorCode
{
    ParseError = -32700,
    InvalidRequest = -32600,
    MethodNotFound = -32601,
    InvalidParams = -32602,
    InternalError = -32603,
    ServerNotInitialized = -32002,
    RequestCancelled = -32800,
    RequestFailed = -32803,
}

/// <summary>A request cannot be answered; the message tells the person why.</summary>
internal sealed class RequestException(ErrorCode code, string message) : Exception(message)
{
    /// <summary>For the client.</summary>
    public ErrorCode Code => code;
}
