namespace Byrelaw.Loading;

/// <summary>Finds the animal that someone asks for.</summary>
public static class AnimalAskedFor
{
    /// <summary>Her place in the herd.</summary>
    /// <param name="number">Her number on the farm.</param>
    /// <param name="herd">The records.</param>
    /// <exception cref="CannotDoException">The records have no such animal; the message offers the number that was probably meant.</exception>
    public static int Find(string number, Herd herd)
    {
        var animal = herd.Find(number);
        if (animal >= 0)
        {
            return animal;
        }

        var plain = number.TrimStart('0');
        var near = herd.Numbers.Where(other => other.TrimStart('0') == plain && plain.Length > 0).Take(2).ToArray() is [var padded] ? padded : NearestName.To(number, herd.Numbers);
        throw new CannotDoException($"no animal {number} in {herd.AnimalsFile}{(near is null ? "" : $"; did you mean {near}?")}");
    }
}
