namespace Byrelaw.Reporting.Words;

/// <summary>What sorts of recipients are called.</summary>
public static class CarrierWords
{
    /// <summary>As a line of the programme says it: <c>dry cows</c>.</summary>
    public static string Of(Carrier carrier) => carrier switch
    {
        Carrier.Heifers => "heifers",
        Carrier.DryCows => "dry cows",
        _ => "cows",
    };

    /// <summary>Beside the other sorts: <c>cows in milk</c>.</summary>
    public static string Beside(Carrier carrier) => carrier == Carrier.Cows ? "cows in milk" : Of(carrier);
}
