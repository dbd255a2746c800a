namespace Byrelaw.Planning.Forecasting;

/// <summary>What is counted on the way from donors to calves, in its order.</summary>
public enum Stage
{
    /// <summary>Donors times sessions; for frozen embryos, straws thawed.</summary>
    Collections,

    /// <summary>Oocytes recovered; only where eggs are collected.</summary>
    Oocytes,

    /// <summary>Embryos fit for transfer.</summary>
    Embryos,

    /// <summary>Recipients accepted on the day.</summary>
    Recipients,

    /// <summary>Transfers: the fewer of embryos and recipients, session by session.</summary>
    Transfers,

    /// <summary>Pregnant at the first check.</summary>
    Pregnant,

    /// <summary>Still pregnant at the second check.</summary>
    Kept,

    /// <summary>Calved.</summary>
    Calvings,

    /// <summary>Calves alive at a day old.</summary>
    Alive,

    /// <summary>Heifer calves among those alive.</summary>
    Heifers,
}
