namespace Byrelaw.Records.Embryos;

/// <summary>What has become of an embryo.</summary>
public enum EmbryoStatus
{
    /// <summary>It was not frozen, and not used.</summary>
    Fresh,

    /// <summary>It was frozen, and not used.</summary>
    InTheTank,

    /// <summary>It was put into a recipient.</summary>
    Used,

    /// <summary>It was discarded.</summary>
    Discarded,

    /// <summary>The records do not say for sure; it is offered to nobody.</summary>
    InDoubt,
}
