namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds the animals that a programme books for its sessions.</summary>
internal sealed class BookingBinder(Context context, Block block)
{
    /// <summary>All bookings, in the order of writing; each animal has one.</summary>
    public ImmutableArray<Booking> Bind(PlanStatements plans, CollectionDays collections)
    {
        var sessions = collections.OnAVisit is not null ? collections.Repeat?.Times ?? 1 : Math.Max(collections.All.Length, 1);
        var all = ImmutableArray.CreateBuilder<Booking>();
        foreach (var line in block.Lines.OfType<BookingLine>())
        {
            if (Method(plans, line.Method) is not { } method || Session(line, sessions) is not { } session)
            {
                continue;
            }

            foreach (var animal in line.Animals)
            {
                if (all.FirstOrDefault(one => one.Animal == animal.Value) is { } first)
                {
                    context.Problems.Add(BookingProblems.Twice(animal.Span, animal.Value, first.Session));
                }
                else
                {
                    all.Add(new Booking(animal.Value, method.Name, session, animal.Span));
                }
            }
        }

        return all.ToImmutable();
    }

    private int? Session(BookingLine line, int sessions)
    {
        if (line.Session is null)
        {
            return context.None<int>(BookingProblems.NoSession(line.Method.Span));
        }

        return line.Session.Value >= 1 && line.Session.Value <= sessions && line.Session.Value == Math.Floor(line.Session.Value)
            ? (int)line.Session.Value
            : context.None<int>(BookingProblems.NoSuchSession(line.Session.Span, sessions));
    }

    private Method? Method(PlanStatements plans, TextSyntax name)
    {
        if (plans.Method(name.Value) is not { } method)
        {
            return context.Fail<Method>(AimProblems.UnknownMethod(name.Span, name.Value, [.. plans.Methods.Where(one => !one.IsForDonors).Select(one => one.Name)]));
        }

        return method.IsForDonors ? context.Fail<Method>(AimProblems.MethodForOthers(name.Span, method.Name, isForDonors: true)) : method;
    }
}
