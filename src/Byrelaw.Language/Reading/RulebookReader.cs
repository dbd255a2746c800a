using NodaTime;

namespace Byrelaw.Language.Reading;

/// <summary>Reads a rule file and all it uses into one resolved rulebook.</summary>
public static class RulebookReader
{
    /// <summary>Reads, binds and resolves.</summary>
    /// <param name="path">The programme's file, or a rule file on its own.</param>
    /// <param name="files">Where files come from.</param>
    /// <param name="knownOn">Agreements after this day do not exist; null for all of them.</param>
    /// <returns>Null where there is no such file.</returns>
    public static RulebookReading? Read(string path, IRuleFiles files, LocalDate? knownOn = null) => throw new NotImplementedException();
}
