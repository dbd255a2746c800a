namespace Byrelaw.Testing.RandomCases;

/// <summary>A random case for which something does not hold.</summary>
/// <param name="message">Which, how to see it again, what is wrong, and the case.</param>
/// <param name="inner">What the test itself threw.</param>
public sealed class CaseFailedException(string message, Exception? inner = null) : Exception(message, inner);
