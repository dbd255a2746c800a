namespace Byrelaw.Judging.Criteria;

/// <summary>One rule's waivers by animal: each holds from the agreed day to its last, both included.</summary>
internal sealed class WaiverDays
{
    private readonly Dictionary<int, List<Waiver>>? _byAnimal;

    public WaiverDays(Herd herd, IEnumerable<Waiver> waivers)
    {
        foreach (var waiver in waivers)
        {
            if (herd.Find(waiver.Animal) is var animal and >= 0)
            {
                _byAnimal ??= [];
                if (!_byAnimal.TryGetValue(animal, out var own))
                {
                    _byAnimal[animal] = own = [];
                }

                own.Add(waiver);
            }
        }
    }

    /// <summary>Whether nobody has one.</summary>
    public bool IsEmpty => _byAnimal is null;

    /// <summary>The waiver that holds on a day, if any.</summary>
    public Waiver? On(int animal, int day, ref int until)
    {
        if (_byAnimal is null || !_byAnimal.TryGetValue(animal, out var own))
        {
            return null;
        }

        Waiver? holds = null;
        foreach (var waiver in own)
        {
            var from = Day.Number(waiver.Agreement.On);
            var to = Day.Number(waiver.Until);
            if (day < from)
            {
                until = Math.Min(until, from - 1);
            }
            else if (day <= to)
            {
                until = Math.Min(until, to);
                holds ??= waiver;
            }
        }

        return holds;
    }
}
