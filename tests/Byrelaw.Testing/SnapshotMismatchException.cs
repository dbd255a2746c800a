namespace Byrelaw.Testing;

/// <summary>Text that people read differs from its approved copy.</summary>
public sealed class SnapshotMismatchException(string message) : Exception(message);
