namespace Byrelaw.Records.Embryos;

/// <summary>Why an embryo is in doubt.</summary>
public enum EmbryoDoubt
{
    /// <summary>Its own row cannot be read.</summary>
    RowUnreadable,

    /// <summary>Two transfers name it, or a transfer and another end.</summary>
    UsedTwice,

    /// <summary>A transfer on record may be of it.</summary>
    MayBeUsed,

    /// <summary>A row of it has no day that can be read.</summary>
    NoDay,

    /// <summary>Its straw was thawed, and it went into nobody: somebody is to say that it was discarded, or into whom it went.</summary>
    Thawed,

    /// <summary>A sheet that it stands on is not back.</summary>
    OnAnOpenSheet,
}
