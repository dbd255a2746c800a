namespace Byrelaw.Reporting.Words;

/// <summary>Numbers and counted things.</summary>
public static class Numbers
{
    /// <summary>Up to three decimals, none where there are none.</summary>
    public static string Of(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A number that stands beside a limit: with as many decimals as it takes to see on which side it lies.</summary>
    public static string Beside(double value, double limit)
    {
        var text = Of(value);
        return value != limit && text == Of(limit) ? value.ToString("0.#########", CultureInfo.InvariantCulture) : text;
    }

    /// <summary><c>1 cow</c>, <c>2 cows</c>, <c>no cows</c>.</summary>
    public static string Count(int count, string one, string many) =>
        count switch { 0 => $"no {many}", 1 => $"1 {one}", _ => string.Create(CultureInfo.InvariantCulture, $"{count} {many}") };

    /// <summary><c>once</c>, <c>twice</c>, <c>3 times</c>.</summary>
    public static string Times(int count) =>
        count switch { 0 => "never", 1 => "once", 2 => "twice", _ => string.Create(CultureInfo.InvariantCulture, $"{count} times") };
}
