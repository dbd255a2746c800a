namespace Byrelaw.Planning.Naming;

/// <summary>
/// All who may have a place: how each stands in every session, by the first method by which she is sure, else the first by which she is to be asked about; and who is begun.
/// They are counted from 0, in the order of the herd.
/// </summary>
internal sealed class SessionCandidates
{
    /// <summary>Points may be parts of one; they are compared as whole numbers.</summary>
    private const double WholePoints = 1_000_000_000;

    private readonly ImmutableArray<MethodChecked>[] _methods;
    private readonly Dictionary<int, double>[] _points;
    private readonly Dictionary<int, BegunAnimal> _begun;
    private readonly int[] _animals;
    private readonly (int Method, StandingOf Standing)[][] _hers;

    /// <param name="sessions">Those that are not over.</param>
    /// <param name="methods">Of each session, the first liked best.</param>
    /// <param name="points">Of each session, by place in the herd.</param>
    /// <param name="notRecipients">Donors that are named.</param>
    /// <param name="begun">Who is begun, by the book.</param>
    public SessionCandidates(
        ImmutableArray<JudgedSession> sessions, ImmutableArray<MethodChecked>[] methods, Dictionary<int, double>[] points, HashSet<int> notRecipients, ImmutableArray<BegunAnimal> begun)
    {
        (Sessions, _methods, _points) = (sessions, methods, points);
        _begun = begun.ToDictionary(one => one.Animal);
        _animals = [.. points.SelectMany(one => one.Keys).Concat(_begun.Keys).Distinct().Where(animal => _begun.ContainsKey(animal) || !notRecipients.Contains(animal)).Order()];
        _hers = [.. _animals.Select(animal => methods.Select(session => HersIn(session, animal)).ToArray())];
    }

    /// <summary>The sessions.</summary>
    public ImmutableArray<JudgedSession> Sessions { get; }

    /// <summary>How many there are.</summary>
    public int Count => _animals.Length;

    /// <summary>Everyone who is begun.</summary>
    public IEnumerable<BegunAnimal> AllBegun => _begun.Values;

    /// <summary>The methods of a session.</summary>
    public ImmutableArray<MethodChecked> Methods(int session) => _methods[session];

    /// <summary>Her place in the herd.</summary>
    public int AnimalAt(int one) => _animals[one];

    /// <summary>Which she is, by her place in the herd; -1 for nobody here.</summary>
    public int Of(int animal) => Array.IndexOf(_animals, animal);

    /// <summary>Where the book says that she is begun, that; else null.</summary>
    public BegunAnimal? BegunOf(int one) => _begun.GetValueOrDefault(_animals[one]);

    /// <summary>Whether she is begun for a session and may go on.</summary>
    public bool IsBegunFor(int one, int session) => BegunOf(one) is { } begun && IsBegunFor(begun, session);

    /// <summary>The same of one who is begun.</summary>
    public bool IsBegunFor(BegunAnimal begun, int session) => begun.Session == Sessions[session].Number && begun.State == BegunState.GoesOn;

    /// <summary>How she stands in a session.</summary>
    public StandingOf Stands(int one, int session) => _hers[one][session].Standing;

    /// <summary>Her method in a session; null for none.</summary>
    public MethodChecked? MethodOf(int one, int session) => _hers[one][session].Method is var method and >= 0 ? _methods[session][method] : null;

    /// <summary>Whether something is given by it.</summary>
    public bool IsTreated(int one, int session) => MethodOf(one, session) is { Method.IsNatural: false };

    /// <summary>Her points of the preferences.</summary>
    public double Points(int one, int session) => _points[session].GetValueOrDefault(_animals[one]);

    /// <summary>The same as a whole number.</summary>
    public long WholePointsOf(int one, int session) => (long)Math.Round(WholePoints * Points(one, session));

    /// <summary>She is meant for one session only, by one method; for none, where it is -1.</summary>
    public void Keep(int one, int session, int method, StandingOf standing) => _hers[one] = [.. _hers[one].Select((_, i) => i == session ? (method, standing) : (-1, default(StandingOf)))];

    /// <summary>All of whom something holds.</summary>
    public IEnumerable<int> Where(Func<int, bool> holds) => Enumerable.Range(0, Count).Where(holds);

    /// <summary>Her method is the first by which she is sure, else the first by which she is to be asked about.</summary>
    private static (int Method, StandingOf Standing) HersIn(ImmutableArray<MethodChecked> methods, int animal)
    {
        var best = (Method: -1, Standing: default(StandingOf));
        for (var i = 0; i < methods.Length; i++)
        {
            if (methods[i].Animals[animal] is var standing && standing.Standing > best.Standing.Standing)
            {
                best = (i, standing);
            }
        }

        return best;
    }
}
