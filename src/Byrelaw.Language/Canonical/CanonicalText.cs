using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Language.Canonical;

/// <summary>Prints rulebooks the one way; what it prints reads back to the same rulebook.</summary>
public static class CanonicalText
{
    /// <summary>The whole rulebook: blocks sorted by kind and name, with reasons, sources, agreements and
    /// layers; without comments and paths.</summary>
    public static string Of(Rulebook rulebook) => throw new NotImplementedException();

    /// <summary>One condition on one line (a list: <c>any of: A; B</c>), for pages that quote a rule.</summary>
    public static string Of(Condition condition) => throw new NotImplementedException();
}
