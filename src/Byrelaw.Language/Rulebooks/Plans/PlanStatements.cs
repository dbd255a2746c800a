namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>All statements for planning, resolved through the layers. The programme's own lines are its <see cref="Aims"/>.</summary>
public sealed record PlanStatements
{
    /// <summary>No statements.</summary>
    public static readonly PlanStatements None = new();

    /// <summary>Ways to have animals ready.</summary>
    public ImmutableArray<Method> Methods { get; init; } = [];

    /// <summary>When teams come.</summary>
    public ImmutableArray<Visits> Visits { get; init; } = [];

    /// <summary>Rates and numbers.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];

    /// <summary>Prices.</summary>
    public ImmutableArray<CostLine> Costs { get; init; } = [];

    /// <summary>What must be done by when; those not needed are among them.</summary>
    public ImmutableArray<PlanTask> Tasks { get; init; } = [];

    /// <summary>What the farm says is done, in the order of writing; a day to come is not in force.</summary>
    public ImmutableArray<TaskDone> Done { get; init; } = [];

    /// <summary>The sessions that are given up.</summary>
    public ImmutableArray<StoppedSession> Stopped { get; init; } = [];

    /// <summary>What people quote, in the order of writing.</summary>
    public ImmutableArray<Yardstick> Yardsticks { get; init; } = [];

    /// <summary>What must be said beside treatments.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>The method with a name; null where there is none.</summary>
    public Method? Method(string name) => Methods.FirstOrDefault(method => NameFolding.Fold(method.Name) == NameFolding.Fold(name));

    /// <summary>
    /// The assumption that says most about a case: of those that fit it, the one with the most conditions of its own; null where none fits.
    /// </summary>
    /// <param name="quantity">Of what.</param>
    /// <param name="state">Of fresh or of frozen embryos.</param>
    /// <param name="animals">In recipients of this sort; what is said of cows holds of dry ones too where nothing more is said of them.</param>
    /// <param name="sexedSemen">With sexed semen.</param>
    /// <param name="breed">Of calves of this breed.</param>
    /// <param name="donor">Of this donor: her own line counts before all others.</param>
    public Assumption? Assume(AssumedQuantity quantity, EmbryoState? state = null, Carrier? animals = null, bool sexedSemen = false, string? breed = null, string? donor = null) =>
        Assumptions
            .Where(one => one.Quantity == quantity
                && (one.State is null || one.State == state) && (one.In is null || one.In == animals || (one.In == Carrier.Cows && animals == Carrier.DryCows)) && (!one.WithSexedSemen || sexedSemen)
                && (one.Donor is null || one.Donor == donor)
                && (one.Breed is null || (breed is not null && NameFolding.Fold(one.Breed) == NameFolding.Fold(breed))))
            .MaxBy(one => (one.State is null ? 0 : 2) + (one.In switch { null => 0, Carrier.DryCows => 3, _ => 2 }) + (one.WithSexedSemen ? 2 : 0) + (one.Breed is null ? 0 : 2) + (one.Donor is null ? 0 : 16));

    /// <summary>What is paid for one of these; null where nothing is said.</summary>
    public CostLine? Cost(CostUnit per) => Costs.FirstOrDefault(line => line.Per == per && line.Method is null);

    /// <summary>What one animal treated by a method costs: said for the method by itself, in the method, or for any; null where nothing is.</summary>
    public Money? CostOf(Method method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return Costs.FirstOrDefault(line => line.Method is { } name && NameFolding.Fold(name) == NameFolding.Fold(method.Name))?.Amount
            ?? method.Cost ?? Cost(CostUnit.AnimalTreated)?.Amount;
    }
}
