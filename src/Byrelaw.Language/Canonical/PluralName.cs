namespace Byrelaw.Language.Canonical;

/// <summary>What several of a kind are called.</summary>
internal static class PluralName
{
    /// <summary>The further name that is the declared one with <c>s</c> or <c>es</c>; the declared one where there is none.</summary>
    public static string Of(Kind kind)
    {
        var singular = NameFolding.Fold(kind.Name);
        return kind.AlsoNames.FirstOrDefault(name => NameFolding.Fold(name) is var other && (other == singular + "s" || other == singular + "es")) ?? kind.Name;
    }
}
