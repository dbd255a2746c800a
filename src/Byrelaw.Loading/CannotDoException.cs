namespace Byrelaw.Loading;

/// <summary>A command cannot be done; the message is the whole story, in one line.</summary>
public sealed class CannotDoException(string message) : Exception(message);
